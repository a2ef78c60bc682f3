import { describe, expect, it } from 'vitest';
import { sourceFiles } from './source-files.ts';

const binary = /\.(png|jpe?g|webp|ico|woff2|pdf|zip)$/;
const files = sourceFiles().filter(({ path }) => !binary.test(path));
const thisFile = 'tests/no-leftovers.test.ts';

/** Lines of the kept files that match, as `path:line text`. */
function linesWith(pattern: RegExp, concerns = (_path: string) => true): string[] {
  return files
    .filter(({ path }) => path !== thisFile && path !== 'package-lock.json' && concerns(path))
    .flatMap(({ path, text }) =>
      text
        .split('\n')
        .flatMap((line, i) => (pattern.test(line) ? [`${path}:${i + 1} ${line.trim()}`] : [])),
    );
}

describe('nothing is left lying about', () => {
  it('no note to self', () => {
    expect(linesWith(/\b(TODO|FIXME|XXX|HACK)\b/)).toEqual([]);
  });

  it('no placeholder text', () => {
    expect(linesWith(/lorem ipsum|coming soon|to be written|under construction/i)).toEqual([]);
  });

  it('no path of the machine it was written on', () => {
    expect(
      linesWith(/(^|[\s"'`(=])\/(work|home|Users|root|tmp|mnt)\/|[A-Z]:\\Users|\.\.\/shared\b/),
    ).toEqual([]);
  });

  it('no test is skipped, focused or waiting to be written', () => {
    const parked = /\b(it|test|describe|suite)(\.\w+)*\.(only|skip|todo|fails)\b/;
    expect(linesWith(parked, (path) => path.startsWith('tests/'))).toEqual([]);
  });

  it('no debugger statement, and no talk to the console in what is published', () => {
    expect(linesWith(/\bdebugger;/)).toEqual([]);
    const published = (path: string) => /^(lib|components|content\/pages)\//.test(path);
    expect(linesWith(/\bconsole\.\w+\(/, published)).toEqual([]);
  });

  it('no check silenced', () => {
    expect(linesWith(/@ts-ignore|@ts-nocheck|eslint-disable/)).toEqual([]);
  });

  it('no conflict marker', () => {
    expect(linesWith(/^(<{7}|>{7}|={7})( |$)/)).toEqual([]);
  });
});

describe('the lock file', () => {
  const lock = JSON.parse(files.find(({ path }) => path === 'package-lock.json')?.text ?? '{}');
  const packages = Object.entries<{ resolved?: string; integrity?: string }>(lock.packages ?? {});

  it('pins every package by its content', () => {
    expect(packages.length).toBeGreaterThan(100);
    const loose = packages.filter(([path, { integrity }]) => path !== '' && !integrity);
    expect(loose.map(([path]) => path)).toEqual([]);
  });

  it('names no registry, so that each reader uses his own', () => {
    const named = packages.filter(([, { resolved }]) => resolved !== undefined);
    expect(named.map(([path, { resolved }]) => `${path}: ${resolved}`)).toEqual([]);
  });
});
