import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';

/** Scripts that stand in the page as written; the page imports the very same files as text. */
const inlineScripts = ['components/Units/before-paint.js', 'components/Units/show-units.js'];

type Hash = `sha256-${string}`;

function hashOf(file: string): Hash {
  const text = readFileSync(file, 'utf8').trim();
  return `sha256-${createHash('sha256').update(text).digest('base64')}`;
}

/**
 * The content security policy of every page, for Astro's `security.csp`: nothing from elsewhere,
 * scripts and styles only by the hash of their text. Astro adds the hashes of what it bundles.
 */
export function contentPolicy() {
  return {
    directives: [
      "default-src 'self'",
      "img-src 'self' data: blob:",
      "object-src 'none'",
      "base-uri 'self'",
      "form-action 'none'",
    ] as const satisfies string[],
    scriptDirective: { hashes: inlineScripts.map(hashOf) },
  };
}
