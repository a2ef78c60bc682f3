import { readdirSync, readFileSync } from 'node:fs';

/** The packages of which code reaches the reader's browser. */
export const shipped = ['d3-dsv', 'minisearch', 'preact', 'uqr', 'valibot'] as const;

export interface ShippedPackage {
  name: string;
  version: string;
  /** An SPDX name: MIT. */
  license: string;
  /** The text that has to go along with the code. */
  text: string;
}

/**
 * What the installed packages say of themselves.
 * @throws Error when a package has no text of its license
 */
export const shippedPackages = (): ShippedPackage[] =>
  shipped.map((name) => {
    const folder = `node_modules/${name}`;
    const { version, license } = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8'));
    const file = readdirSync(folder).find((one) => /^licen[cs]e/i.test(one));
    if (!file) throw new Error(`${name} has no text of its license`);
    return { name, version, license, text: readFileSync(`${folder}/${file}`, 'utf8').trim() };
  });
