import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wilson } from '../../../lib/record/wilson.ts';

describe('the range of a share', () => {
  // Newcombe 1998, Statistics in Medicine 17:857–872, Table I, method 3; values from memory.
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%i of %i lies in %f to %f', (passed, all, low, high) => {
    const found = wilson(passed, all);
    expect(found.low).toBeCloseTo(low, 4);
    expect(found.high).toBeCloseTo(high, 4);
  });

  it('solves the equation it comes from: the share lies 1.96 standard errors from either end', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 400 }), fc.nat(), (all, some) => {
        const passed = some % (all + 1);
        const { low, high } = wilson(passed, all);
        const away = (end: number) =>
          Math.abs(passed / all - end) / Math.sqrt((end * (1 - end)) / all);
        if (passed > 0) expect(away(low)).toBeCloseTo(1.959964, 4);
        if (passed < all) expect(away(high)).toBeCloseTo(1.959964, 4);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(high).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('is refused where nothing was seen', () => {
    expect(() => wilson(0, 0)).toThrow(RangeError);
    expect(() => wilson(3, 2)).toThrow(RangeError);
  });
});

it('begins at none and ends at all, to the last digit', () => {
  for (let all = 1; all <= 60; all++) {
    expect(wilson(0, all).low).toBe(0);
    expect(wilson(all, all).high).toBe(1);
  }
});

it.each([
  [-1, 3],
  [4, 3],
  [0, 0],
  [Number.NaN, 3],
  [1, Number.NaN],
])('has no share of %d in %d', (passed, all) => {
  expect(() => wilson(passed, all)).toThrow(RangeError);
});
