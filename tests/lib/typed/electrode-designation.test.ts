import { expect, it } from 'vitest';
import { readDesignation } from '../../../lib/typed/electrode-designation.ts';

/** All others here are low-hydrogen. */
const kind: Record<string, string> = { 'AWS E6010': 'not low-hydrogen' };

it.each([
  ['E7018', ['E7018', 'E70XX-X'], undefined],
  ['e-7018', ['E7018', 'E70XX-X'], undefined],
  ['7018', ['E7018', 'E70XX-X'], undefined],
  ['AWS E6010', ['E6010'], undefined],
  ['E7018-1', ['E7018-1'], undefined],
  ['E7018m', ['E7018M', 'E70XX-X'], undefined],
  ['E7018 H4R', ['E7018', 'E70XX-X'], 'H4R'],
  ['E7018H8', ['E7018', 'E70XX-X'], 'H8'],
  ['E7018-h16r', ['E7018', 'E70XX-X'], 'H16R'],
  ['E7018-1 H4R', ['E7018-1'], 'H4R'],
  ['E7018 R', ['E7018', 'E70XX-X'], 'R'],
  ['E8018-C3', ['E80XX-X'], undefined],
  ['E9018-B3 H4', ['E90XX-X'], 'H4'],
  ['E10018-D2', ['E100XX-X'], undefined],
  ['E11018M', ['E110XX-X'], undefined],
  ['E7016-A1', ['E70XX-X'], undefined],
  ['E8010-P1', [], undefined],
  ['E12018-M', [], undefined],
  ['E7018 H5', [], undefined],
  ['ER70S-6', [], undefined],
  ['70', [], undefined],
])('%s names %j and %s', (typed, names, designator) => {
  const read = readDesignation(typed);
  expect(read).toEqual({
    names,
    kind: kind[typed] ?? (names.length > 0 ? 'low-hydrogen' : undefined),
    designator,
  });
});
