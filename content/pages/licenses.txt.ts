import { shippedPackages } from '../shipped-packages.ts';

/** The licenses of the packages whose code is in these pages. */
export function GET(): Response {
  const parts = shippedPackages().map(
    ({ name, version, license, text }) => `${name} ${version}: ${license}\n\n${text}\n`,
  );
  return new Response(parts.join(`\n${'-'.repeat(72)}\n\n`));
}
