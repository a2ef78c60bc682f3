/** Counting days against the Gregorian rules: month lengths and leap years, no clock. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, addMonths, daysBetween } from '../../lib/calendar.ts';

/** A year with 4 in it is a leap year, but for whole hundreds that 400 does not divide. */
const isLeap = (year: number) => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
const lengthOf = (year: number, month: number): number =>
  month === 2 ? (isLeap(year) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;
const two = (number: number) => String(number).padStart(2, '0');
const days = fc
  .tuple(fc.integer({ min: 1900, max: 2199 }), fc.integer({ min: 1, max: 12 }), fc.nat(30))
  .map(([year, month, place]) => ({ year, month, date: 1 + (place % lengthOf(year, month)) }));
type Day = { year: number; month: number; date: number };
const text = ({ year, month, date }: Day) => `${year}-${two(month)}-${two(date)}`;

function dayAfter({ year, month, date }: Day): Day {
  if (date < lengthOf(year, month)) return { year, month, date: date + 1 };
  return month < 12 ? { year, month: month + 1, date: 1 } : { year: year + 1, month: 1, date: 1 };
}

describe('a day on', () => {
  it('is the next of the month, the next month or the next year', () => {
    fc.assert(
      fc.property(days, (day) => {
        const next = text(dayAfter(day));
        expect(addDays(text(day), 1)).toBe(next);
        expect(addDays(next, -1)).toBe(text(day));
        expect(daysBetween(text(day), next)).toBe(1);
        expect(daysBetween(next, text(day))).toBe(-1);
      }),
    );
  });

  it('adds up: as many days as were added lie between', () => {
    fc.assert(
      fc.property(days, fc.integer({ min: -20_000, max: 20_000 }), (day, many) => {
        expect(daysBetween(text(day), addDays(text(day), many))).toBe(many);
      }),
    );
    // Julian day numbers 2451545 and 2461102: January 1, 2000 and March 2, 2026 (from memory).
    expect(daysBetween('2000-01-01', '2026-03-02')).toBe(9557);
  });
});

describe('months on', () => {
  it.each([
    ['2026-03-02', 6, '2026-09-02'],
    ['2025-08-31', 6, '2026-02-28'],
    ['2023-08-31', 6, '2024-02-29'],
    ['2026-08-28', 6, '2027-02-28'],
    ['2026-05-31', 6, '2026-11-30'],
    ['2026-07-01', 6, '2027-01-01'],
    ['2026-06-30', 6, '2026-12-30'],
    ['2026-12-31', 6, '2027-06-30'],
    ['2024-02-29', 12, '2025-02-28'],
    ['2026-01-31', 1, '2026-02-28'],
    ['2026-03-31', 0, '2026-03-31'],
    ['2026-03-31', -1, '2026-02-28'],
    ['2026-01-15', -1, '2025-12-15'],
  ])('from %s, %d of them, end on %s', (day, months, end) => {
    expect(addMonths(day, months)).toBe(end);
  });

  it('keep the day of the month, or take the last day of a month too short for it', () => {
    fc.assert(
      fc.property(days, fc.integer({ min: -240, max: 240 }), ({ year, month, date }, months) => {
        const place = 12 * year + month - 1 + months;
        const then = { year: Math.floor(place / 12), month: (place % 12) + 1 };
        const last = lengthOf(then.year, then.month);
        expect(addMonths(text({ year, month, date }), months)).toBe(
          text({ ...then, date: Math.min(date, last) }),
        );
      }),
    );
  });
});
