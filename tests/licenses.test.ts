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

describe('what is installed', () => {
  const lock = JSON.parse(readFileSync('package-lock.json', 'utf8'));
  const packages = Object.entries<{
    hasInstallScript?: boolean;
    dev?: boolean;
    optional?: boolean;
  }>(lock.packages);

  it('needs no script at install but those that the package file names', () => {
    const { allowScripts } = JSON.parse(readFileSync('package.json', 'utf8'));
    const scripted = packages
      .filter(([, { hasInstallScript, optional }]) => hasInstallScript && !optional)
      .map(([path]) => path.replace(/^.*node_modules\//, ''));
    expect(scripted.filter((name) => allowScripts[name] !== false)).toEqual([]);
  });
});
