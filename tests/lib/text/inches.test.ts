import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printFraction, readFraction } from '../../../lib/text/inches.ts';

describe('inches', () => {
  it('reads back what it prints, on every rule and on both sides of zero', () => {
    const rule = fc.constantFrom(2, 4, 8, 16, 32, 64);
    fc.assert(
      fc.property(rule, fc.integer({ min: -999, max: 999 }), (parts, count) => {
        const printed = printFraction(count / parts, parts);
        const back = printed.includes('/')
          ? readFraction(printed)
          : Number(printed.replace('−', '-'));
        expect(back).toBeCloseTo(count / parts, 12);
      }),
    );
  });

  it.each([
    ['-1/16', -0.0625],
    ['−1/16', -0.0625],
    ['- 1/2', -0.5],
    ['-1-3/8', -1.375],
    ['+1/4', 0.25],
    ['1 3/8', 1.375],
  ])('reads %s', (text, value) => {
    expect(readFraction(text)).toBe(value);
  });

  it.each(['1-5/4', '3/0', '-3/0'])('finds no size in %s', (text) => {
    expect(readFraction(text)).toBeNaN();
  });

  it.each(['3', '0.5', '1/2/3', '--1/2', '1//2'])('leaves %s to others', (text) => {
    expect(readFraction(text)).toBeUndefined();
  });
});
