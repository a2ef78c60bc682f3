import { expect, it } from 'vitest';
import { angleByTheHour } from '../../../lib/typed/clock-place.ts';

it.each([
  ['4:00', '120 deg'],
  ["4 o'clock", '120 deg'],
  ['4 O’CLOCK', '120 deg'],
  ['4 oclock', '120 deg'],
  [' 12:00 ', '0 deg'],
  ['12 o’clock', '0 deg'],
  ['1:00', '30 deg'],
  ['10:30', '315 deg'],
  ['12:01', '0.5 deg'],
])('%j is at %s', (typed, angle) => {
  expect(angleByTheHour(typed)).toBe(angle);
});

it.each(['4', '120', '120 deg', '4.5', '0:30', '13:00', '4:75', 'at 4:00', '4:00 pm', ''])(
  '%j stays as it was typed',
  (typed) => {
    expect(angleByTheHour(typed)).toBe(typed);
  },
);
