import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printFraction, readFraction, ruleOf, spellFractions } from '../../../lib/text/inches.ts';

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
    ['1  3/8', 1.375],
    ['1 - 3 / 8', 1.375],
    ['5/4', 1.25],
    ['8/8', 1],
  ])('reads %s', (text, value) => {
    expect(readFraction(text)).toBe(value);
  });

  it.each(['1-5/4', '1-4/4', '3/0', '-3/0'])('finds no size in %s', (text) => {
    expect(readFraction(text)).toBeNaN();
  });

  it.each(['3', '0.5', '1/2/3', '--1/2', '1//2', '1--3/8', '1x-3/8', '13/8 in', 'x1/2'])(
    'leaves %s to others',
    (text) => {
      expect(readFraction(text)).toBeUndefined();
    },
  );

  it('writes one-character fractions out, also behind a whole number', () => {
    expect(spellFractions('½')).toBe('1/2');
    expect(['1½', '1¼', '1¾', '1⅛', '1⅜', '1⅝', '1⅞'].map(spellFractions)).toEqual([
      '1 1/2',
      '1 1/4',
      '1 3/4',
      '1 1/8',
      '1 3/8',
      '1 5/8',
      '1 7/8',
    ]);
  });

  it.each([
    [0, 16, '0'],
    [0.01, 16, '0'],
    [0.5, 16, '1/2'],
    [-1.25, 16, '−1-1/4'],
    [1.99, 16, '2'],
    [0.34, 16, '5/16'],
    [0.35, 16, '3/8'],
  ])('prints %d in on a rule of %d parts as %s, in lowest terms', (value, parts, text) => {
    expect(printFraction(value, parts)).toBe(text);
  });
});

describe('ruleOf', () => {
  const rules = [1, 2, 4, 8, 16, 32, 64];

  it('finds the coarsest rule on which a size lies', () => {
    fc.assert(
      fc.property(fc.constantFrom(...rules), fc.integer({ min: -500, max: 500 }), (rule, n) => {
        // An odd count of parts lies on no coarser rule.
        const odd = rule === 1 ? n : 2 * n + 1;
        expect(ruleOf(odd / rule)).toBe(rule);
      }),
    );
  });

  it('takes a size for what was meant within a billionth of an inch, and no further', () => {
    for (const rule of rules) {
      const size = 3 + 1 / rule;
      expect(ruleOf(size + 0.99e-9), `${rule}`).toBe(rule);
      expect(ruleOf(size - 0.99e-9), `${rule}`).toBe(rule);
      expect(ruleOf(size + 1.01e-9), `${rule}`).toBeUndefined();
    }
  });

  it.each([0.1, 1 / 3, 1 / 128, 0.3])('finds none for %d', (size) => {
    expect(ruleOf(size)).toBeUndefined();
  });
});
