import { expect, it } from 'vitest';
import { compare, halfLastDigit, nearness } from '../../lib/check.ts';

it.each([
  ['0.84', 0.84, undefined, 'same'],
  ['0.84', 0.842, undefined, 'close'],
  ['0.84', 0.8449, undefined, 'within'],
  ['0.84', 0.86, 0.03, 'stated'],
  ['0.84', 0.86, undefined, 'off'],
  ['yes', 'yes', undefined, 'same'],
])('%s printed, %s computed, tolerance %s: %s', (printed, computed, tolerance, near) => {
  const compared = compare(printed as string, computed, tolerance as number | undefined);
  expect(nearness(compared, tolerance !== undefined)).toBe(near);
});

it.each([
  ['none', null, true],
  ['0', null, false],
  ['true', true, true],
  ['no', 'yes', false],
  ['', 0, false],
  [' ', 0, false],
  ['about 5', 5, false],
  ['3/16', 0.1875, true],
  ['3/16', 0.1876, false],
  ['1-3/8', 1.375, true],
  ['1970', 1970.5, true],
  ['1970', 1970.6, false],
  ['0.840', 0.8405, true],
  ['0.840', 0.8406, false],
])('%j printed and %j computed agree: %s', (printed, computed, agrees) => {
  expect(compare(printed, computed).agrees).toBe(agrees);
});

it('tells the difference and how much would still agree', () => {
  expect(compare('0.84', 0.842)).toMatchObject({
    difference: expect.closeTo(0.002, 12),
    within: 0.005,
  });
  expect(compare('0.84', 0.9, 0.1)).toMatchObject({ agrees: true, within: 0.1 });
});

it('calls near what lies within half of what agrees, and the same what a billionth parts', () => {
  const at = (difference: number, stated = false) =>
    nearness({ agrees: true, difference, within: 0.004 }, stated);
  expect([0, 9e-10, -9e-10].map((off) => at(off))).toEqual(['same', 'same', 'same']);
  expect([1.1e-9, 0.002, -0.002].map((off) => at(off))).toEqual(['close', 'close', 'close']);
  expect([0.0021, -0.0021, 0.004].map((off) => at(off))).toEqual(['within', 'within', 'within']);
  expect([at(0, true), at(0.001, true)]).toEqual(['same', 'stated']);
  expect(nearness({ agrees: true }, false)).toBe('same');
  expect(nearness({ agrees: true, difference: 1 }, false)).toBe('close');
});

it('takes a fraction for a size on a rule, which a billionth of an inch misses', () => {
  expect(compare('3/16', 0.1875 + 9e-10).agrees).toBe(true);
  expect(compare('3/16', 0.1875 - 1.1e-9).agrees).toBe(false);
  expect(halfLastDigit('1-3/8')).toBe(1e-9);
  expect(['12', ' 12.50 ', '.5', '100'].map(halfLastDigit)).toEqual([0.5, 0.005, 0.05, 0.5]);
});

it('holds a computed word against the printed one to the letter', () => {
  expect(compare('Yes', 'yes')).toEqual({ agrees: false });
  expect(compare('none', undefined)).toEqual({ agrees: false });
  expect(compare('', 5)).toEqual({ agrees: false });
});
