import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { shipped, shippedPackages } from '../content/shipped-packages.ts';
import { sourceFiles } from './source-files.ts';

/** Licenses that let code be handed on under MIT terms, with their text. */
const allowed = /^(MIT|ISC|BSD-2-Clause|BSD-3-Clause|0BSD|Apache-2\.0|CC0-1\.0)$/;

/** Packages that only work while the site is built. */
const buildOnly =
  /^(astro|katex|mathjs|yaml|preact-render-to-string|node:.*|@astrojs\/.*)(\/.*|:.*)?$/;

describe('what reaches the reader', () => {
  it.each(shippedPackages())('$name is under a license that may be handed on', (one) => {
    expect(one.license).toMatch(allowed);
    expect(one.text.length).toBeGreaterThan(300);
  });

  it('comes from no package that is not on the list', () => {
    const imports = sourceFiles()
      .filter(({ path }) => /^(components|lib)\/.*\.tsx?$/.test(path))
      .flatMap(({ text }) => [
        ...text.matchAll(
          /^(?:import|export)\b[^;]*?\bfrom '([@a-z][\w@/.:-]*)';|\bimport\('([@a-z][\w@/.:-]*)'\)/gm,
        ),
      ])
      .map(([, named, asked]) => named ?? asked ?? '')
      .filter((name) => !buildOnly.test(name));
    const strange = new Set(
      imports.filter((name) => !shipped.some((one) => name === one || name.startsWith(`${one}/`))),
    );
    expect([...strange]).toEqual([]);
  });
});

/**
 * What `npm audit` would ask a server about cannot be known without one; what the lock file says of
 * its packages can.
 */
describe('what is installed', () => {
  const lock = JSON.parse(readFileSync('package-lock.json', 'utf8'));
  const packageFile = JSON.parse(readFileSync('package.json', 'utf8'));
  const packages = Object.entries<Locked>(lock.packages)
    .filter(([path]) => path !== '')
    .map(([path, one]) => ({ name: path.replace(/^.*node_modules\//, ''), ...one }));

  it('is what the package file asks for, no more and no less', () => {
    const { dependencies, devDependencies, optionalDependencies } = lock.packages[''];
    for (const [kind, locked] of Object.entries({
      dependencies,
      devDependencies,
      optionalDependencies,
    }))
      expect(locked, kind).toEqual(packageFile[kind]);
  });

  it('comes in numbered versions, whole, with the strong hash', () => {
    const odd = packages.filter(
      ({ version, integrity, link }) =>
        link || !/^\d+\.\d+\.\d+/.test(version) || !/^sha512-[\w+/]{86}==$/.test(integrity),
    );
    expect(odd).toEqual([]);
  });

  /** Its script only fetches what another package has brought already. */
  const mayHaveScript = ['esbuild'];

  it('needs no script at install, and refuses the one there is', () => {
    const scripted = packages.filter(({ hasInstallScript }) => hasInstallScript);
    expect(scripted.map(({ name }) => name)).toEqual(mayHaveScript);
    for (const name of mayHaveScript) expect(packageFile.allowScripts[name], name).toBe(false);
  });

  it('is given up by none of its makers', () => {
    expect(packages.filter(({ deprecated }) => deprecated)).toEqual([]);
  });

  /** Beside those that may be handed on. None of these reaches a reader: they build or test. */
  const toolsOnly: Record<string, RegExp> = {
    'MPL-2.0': /^(axe-core|lightningcss(-.*)?)$/,
    'LGPL-3.0-or-later': /^@img\/sharp-/,
    'Python-2.0': /^argparse$/,
    'CC-BY-4.0': /^caniuse-lite$/,
    'BlueOak-1.0.0': /^(common-ancestor-path|graceful-fs|lru-cache|minimatch|sax)$/,
    Unlicense: /^robust-predicates$/,
    Zlib: /^pako$/,
    // BSD, says the list in its own file, which is older than the field.
    none: /^parse-cache-control$/,
  };

  it('is under a license that is known here', () => {
    const strange = packages.filter(({ name, license = 'none' }) => {
      const parts = license.replace(/[()]/g, '').split(/ (?:AND|OR) /);
      return !parts.every((part) => allowed.test(part) || toolsOnly[part]?.test(name));
    });
    expect(strange.map(({ name, license }) => `${name}: ${license}`)).toEqual([]);
  });
});

interface Locked {
  version: string;
  integrity: string;
  license?: string;
  deprecated?: string;
  hasInstallScript?: boolean;
  link?: boolean;
}
