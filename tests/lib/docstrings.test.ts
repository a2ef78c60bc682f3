import { describe, expect, it } from 'vitest';
import { sourceFiles } from '../source-files.ts';

const files = sourceFiles().filter(({ path }) => /^lib\/.*\.ts$/.test(path));

interface Exported {
  name: string;
  isFunction: boolean;
  hasDoc: boolean;
}

/** What a file exports by name; biome puts each `export` at the start of a line, its comment above. */
const exportsOf = (text: string): Exported[] =>
  [...text.matchAll(/^export (?:async )?(function|class|const) (\w+)/gm)].map((found) => {
    const [statement, word, name = ''] = found;
    const rest = text.slice(found.index + statement.length);
    const isArrow = /^[^=]*= (?:async )?(?:<[^(]*)?\([^=]*\)(?:: .+?)? =>/s.test(
      rest.split('\n;')[0] ?? '',
    );
    return {
      name,
      isFunction: word !== 'const' || isArrow,
      hasDoc: text.slice(0, found.index).endsWith('*/\n'),
    };
  });

const undocumented = (fits: (path: string, isFunction: boolean) => boolean): string[] =>
  files.flatMap(({ path, text }) =>
    exportsOf(text)
      .filter(({ isFunction, hasDoc }) => fits(path, isFunction) && !hasDoc)
      .map(({ name }) => `${path}: ${name}`),
  );

describe('the library, read as a book', () => {
  it('says of every exported function and class what it does', () => {
    expect(undocumented((_, isFunction) => isFunction)).toEqual([]);
  });

  it('says of every table and each of its parts what it is', () => {
    expect(undocumented((path) => path.startsWith('lib/tables/'))).toEqual([]);
  });

  it('opens every file with what it is, unless its descriptor or its one function says so', () => {
    const silent = files.filter(({ text }) => {
      const describesItself = /\bsummary:|\bsentence:/.test(text);
      const all = exportsOf(text);
      const functions = all.filter(({ isFunction }) => isFunction);
      const [only, ...others] = functions.length > 0 ? functions : all;
      const isTold = only?.hasDoc && others.length === 0;
      return !text.startsWith('/**') && !describesItself && !isTold;
    });
    expect(silent.map(({ path }) => path)).toEqual([]);
  });
});
