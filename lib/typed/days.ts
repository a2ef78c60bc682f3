/** Days that can mean one thing only, as `readDay` takes them: `March 2, 2026` is 2026-03-02. */

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

const slashed = /^(\d{4})[/.](\d\d?)[/.](\d\d?)$/;
const timed = /^(\d{4}-\d\d?-\d\d?)[T\s]\d{1,2}:[\d:.]*Z?$/i;
const dayFirst = /^(\d\d?)(?:st|nd|rd|th)?\s+([a-z]{3,9})\.?,?\s+(\d{4})$/i;
const monthFirst = /^([a-z]{3,9})\.?\s+(\d\d?)(?:st|nd|rd|th)?,?\s+(\d{4})$/i;

/** The day, or the text as it was typed. `03/02/2026` could be two days and stays. */
export function dayInFull(typed: string): string {
  const text = typed.trim();
  const [, year, month, day] = slashed.exec(text) ?? [];
  if (year !== undefined) return `${year}-${month}-${day}`;
  const first = dayFirst.exec(text);
  if (first) return named(first[3], first[2], first[1]) ?? typed;
  const second = monthFirst.exec(text);
  if (second) return named(second[3], second[1], second[2]) ?? typed;
  return timed.exec(text)?.[1] ?? typed;
}

function named(year = '', name = '', day = ''): string | undefined {
  const month = months.indexOf(name.slice(0, 3).toLowerCase()) + 1;
  return month === 0 ? undefined : `${year}-${month}-${day}`;
}
