/** Several booths in one line; what cannot be meant is told. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPlaces } from '../../../lib/booth/booth-places.ts';

describe('booths in one line', () => {
  it.each([
    ['7', ['7']],
    ['7-10, 12', ['7', '8', '9', '10', '12']],
    ['7 to 9; grinder', ['7', '8', '9', 'grinder']],
    ['3, 3, 2-4', ['3', '2', '4']],
    ['7 - 9', ['7', '8', '9']],
    ['10-12', ['10', '11', '12']],
    ['bay   2', ['bay 2']],
    ['7–8', ['7', '8']],
    ['5-5', ['5']],
    ['bay 1-2', ['bay 1-2']],
    ['1-2 left', ['1-2 left']],
    ['twelve signs', ['twelve signs']],
    ['', []],
    [' , ', []],
  ])('reads “%s”', (text, places) => {
    expect(readPlaces(text)).toEqual({ places, problems: [] });
  });
  it.each([
    ['9-3, 7', ['7'], /backward/],
    ['1-9999, 7', ['7'], /more than 40/],
    ['a very long name of a booth, 7', ['7'], /too long/],
  ])('keeps the rest of “%s”', (text, places, problem) => {
    const read = readPlaces(text);
    expect(read.places).toEqual(places);
    expect(read.problems.join()).toMatch(problem);
  });
  it('takes forty and says so when there are more', () => {
    expect(readPlaces('1-40').problems).toEqual([]);
    const read = readPlaces('1-39, a, b');
    expect(read.places).toHaveLength(40);
    expect(read.places.at(-1)).toBe('a');
    expect(read.problems).toEqual(['These are more than 40 booths; the first 40 count']);
    expect(readPlaces('1-41').problems.join()).toMatch(/the most at once/);
  });
  it('never gives more than forty, nor one twice, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.nat(9999), (text, number) => {
        const { places } = readPlaces(`${text},1-${number},${text}`);
        expect(places.length).toBeLessThanOrEqual(40);
        expect(new Set(places).size).toBe(places.length);
      }),
    );
  });
});
