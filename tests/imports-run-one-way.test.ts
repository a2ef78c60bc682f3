import { dirname, join } from 'node:path/posix';
import { describe, expect, it } from 'vitest';
import { sourceFiles } from './source-files.ts';

const files = sourceFiles();
const top = (path: string) => path.split('/')[0] ?? path;

/** Everything a file imports, be it static, dynamic, a re-export or a glob. */
function importsOf({ path, text }: { path: string; text: string }): string[] {
  const statements =
    /(?:\b(?:import|export)\s[^'"`;]*?\bfrom\s*|\bimport\s*\(?\s*|\bimport\.meta\.glob(?:<[^>]*>)?\(\s*\[?\s*|@import\s+)(["'`])([^"'`]+)\1/g;
  return [...text.matchAll(statements)].map(([, , name = '']) =>
    name.startsWith('.') ? join(dirname(path), name) : name,
  );
}

const code = files.filter(
  ({ path }) =>
    /\.(ts|tsx|mjs|js|astro|mdx|css)$/.test(path) && /^(lib|components|content)\//.test(path),
);
const importing = (folder: string, refused: (name: string, path: string) => boolean) =>
  code
    .filter(({ path }) => top(path) === folder)
    .flatMap((file) =>
      importsOf(file)
        .filter((name) => refused(name, file.path))
        .map((name) => `${file.path} imports ${name}`),
    );

describe('imports run one way: content → components → lib', () => {
  it('lib imports nothing from above it, nothing of Node, and only packages that are pure', () => {
    const pure = ['valibot', 'd3-dsv'];
    const refused = importing('lib', (name) => !name.startsWith('lib/') && !pure.includes(name));
    expect(refused).toEqual([]);
  });

  it('lib knows no document, no files, no clock and no chance', () => {
    const reached = files
      .filter(({ path }) => path.startsWith('lib/') && path.endsWith('.ts'))
      .flatMap(({ path, text }) => {
        const withoutComments = text.replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, '');
        const uses = withoutComments.match(
          /(?<![\w.-])(document|window|navigator|localStorage|sessionStorage)\.\w+|\bprocess\.(env|argv|cwd|exit|std\w+)|\bfetch\(|\bDate\.now|\bnew Date\(\)|\bMath\.random|\bperformance\.now|\bimport\.meta\.\w+/g,
        );
        return (uses ?? []).map((use) => `${path} uses ${use}`);
      });
    expect(reached).toEqual([]);
  });

  it('components import no content', () => {
    const refused = importing('components', (name) => top(name) === 'content');
    expect(refused).toEqual([]);
  });

  it('nothing that is published imports the tests', () => {
    const refused = ['lib', 'components', 'content'].flatMap((folder) =>
      importing(folder, (name) => top(name) === 'tests'),
    );
    expect(refused).toEqual([]);
  });

  it('lessons import nothing: their components are handed to them', () => {
    const lessons = code.filter(({ path }) => path.endsWith('.mdx'));
    expect(
      lessons.flatMap((lesson) => importsOf(lesson).map((name) => `${lesson.path}: ${name}`)),
    ).toEqual([]);
  });

  it('imports of own files name them with their ending', () => {
    const bare = code.flatMap((file) =>
      importsOf(file)
        .filter((name) => /^(lib|components|content)\//.test(name))
        .filter(
          (name) => !/\.(ts|tsx|mjs|js|astro|css|svg|yaml|mdx|json|ts\?\w+|\w+\?raw)$/.test(name),
        )
        .map((name) => `${file.path} imports ${name}`),
    );
    expect(bare).toEqual([]);
  });
});

describe('the house', () => {
  it('has nothing at its top level but what the plan names', () => {
    const allowed = [
      'README.md',
      'DEVELOPERS.md',
      'LICENSE',
      'package.json',
      'package-lock.json',
      'tsconfig.json',
      'astro.config.mjs',
      'content',
      'components',
      'lib',
      'tests',
      'public',
    ];
    const found = new Set(files.map(({ path }) => top(path)));
    const surplus = [...found].filter((name) => !allowed.includes(name) && !name.startsWith('.'));
    expect(surplus).toEqual([]);
  });

  it('has no drawer for odds and ends', () => {
    const drawers = /(^|\/)(utils?|helpers?|common|misc|shared|index)(\.ts|\.tsx|\/)/i;
    expect(files.filter(({ path }) => drawers.test(path)).map(({ path }) => path)).toEqual([]);
  });
});
