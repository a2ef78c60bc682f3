import { expect, it } from 'vitest';
import { clockHours } from '../../../components/Audit/clock-hours.ts';

it.each([
  [0, ''],
  [0.75, '45 min'],
  [3, '3 h'],
  [3 + 25 / 60, '3 h 25 min'],
  [1.9999, '2 h'],
])('%s hours are written as %j', (hours, text) => {
  expect(clockHours(hours)).toBe(text);
});
