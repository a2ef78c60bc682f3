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
