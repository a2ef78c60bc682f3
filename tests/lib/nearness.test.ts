import { expect, it } from 'vitest';
import { compare, nearness } from '../../lib/check.ts';

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
