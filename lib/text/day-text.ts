/** A calendar day as people type it. */
import { quoted } from './quoted.ts';

/**
 * Reads `2026-03-02`, or `2026-3-2`, and writes it in full. Other orders could mean two days, so
 * they are refused, as is a day that no calendar has.
 */
export function readDay(text: string): { day: string } | { problem: string } {
  const [, year, month = '', day = ''] = /^\s*([12]\d{3})-(\d\d?)-(\d\d?)\s*$/.exec(text) ?? [];
  if (year === undefined)
    return { problem: `needs a day written like 2026-03-02, not ${quoted(text)}` };
  const written = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  const there = new Date(Date.UTC(+year, +month - 1, +day)).toISOString().slice(0, 10);
  return there === written ? { day: written } : { problem: `${written} is a day no calendar has` };
}
