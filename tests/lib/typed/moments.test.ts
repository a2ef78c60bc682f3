import { describe, expect, it } from 'vitest';
import { readQuantity } from '../../../lib/text/quantity-text.ts';
import { firstDay, runningHours } from '../../../lib/typed/moments.ts';

const hours = (typed: string, from?: number) => {
  const read = readQuantity(runningHours(typed, from), 'h');
  return 'value' in read ? read.value : undefined;
};

describe('a time on the wall', () => {
  it.each([
    ['6:15 pm', 18.25],
    ['6 pm', 18],
    ['6:15PM', 18.25],
    ['6:15:36 p.m.', 18.26],
    ['6:15 am', 6.25],
    ['12 am', 0],
    ['12:30 pm', 12.5],
    [' 18:15:36 ', 18.26],
    ['18:15', 18.25],
    ['25:00', 25],
    ['2.5', 2.5],
    ['30 min', 30],
  ])('%s is %d h', (typed, expected) => {
    const read = readQuantity(runningHours(typed, undefined), 'h');
    expect('value' in read && read.value).toBeCloseTo(expected, 9);
  });

  it.each(['13 pm', '0 am', '6:75 pm', 'noon', '18:15:75', '2026-03-02'])(
    '%s stays as it was typed',
    (typed) => {
      expect(runningHours(typed, undefined)).toBe(typed);
    },
  );
});

describe('a moment with its date', () => {
  const day = firstDay(['2026-03-02 18:15', 'soon', '2026-03-03T01:00']);

  it('counts from midnight before the earliest', () => {
    expect(hours('2026-03-02 18:15', day)).toBe(18.25);
    expect(hours('2026-03-03T01:00', day)).toBe(25);
    expect(hours('2026-03-03T01:00:00Z', day)).toBe(25);
    expect(hours(' 2026-03-04  1:30:36 ', day)).toBeCloseTo(49.51, 9);
  });

  it('counts over the end of a month and through February of a leap year', () => {
    const from = firstDay(['2028-02-28 12:00']);
    expect(hours('2028-03-01 00:00', from)).toBe(48);
  });

  it('stays as it was typed where no calendar has the day, or nothing is dated', () => {
    expect(firstDay(['2026-02-30 10:00', '18:15'])).toBeUndefined();
    expect(firstDay([])).toBeUndefined();
    expect(runningHours('2026-02-30 10:00', day)).toBe('2026-02-30 10:00');
    expect(runningHours('2026-13-01 10:00', day)).toBe('2026-13-01 10:00');
    expect(runningHours('2026-03-02 18:15', undefined)).toBe('2026-03-02 18:15');
  });
});
