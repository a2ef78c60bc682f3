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
