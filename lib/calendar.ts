/** Counting with calendar days, written `2026-03-02`. No clock and no time zone comes in. */

const dayLength = 86_400_000;
const at = (day: string): number => Date.parse(`${day}T00:00:00Z`);
const written = (time: number): string => new Date(time).toISOString().slice(0, 10);

/** The day so many days on; back for a negative number. */
export const addDays = (day: string, days: number): string => written(at(day) + days * dayLength);

/** Days from one to the other; negative where the second comes first. */
export const daysBetween = (from: string, to: string): number => (at(to) - at(from)) / dayLength;

/**
 * The same day of the month, so many months on. Where that month is too short it is its last day:
 * six months from August 31 end on the last of February.
 */
export function addMonths(day: string, months: number): string {
  const [year, month, date] = day.split('-').map(Number) as [number, number, number];
  const last = new Date(Date.UTC(year, month + months, 0)).getUTCDate();
  return written(Date.UTC(year, month - 1 + months, Math.min(date, last)));
}
