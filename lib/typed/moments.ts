/**
 * Moments as logs write them, in hours that run on: `6:15 pm`, `18:15:30`, `2026-03-02 18:15`.
 * Dated ones count from midnight before the earliest of them.
 */

const time =
  /^(\d{1,2})(?::([0-5]\d))?(?::([0-5]\d)(?:\.\d+)?)?\s*([ap])\.?m\.?$|^(\d{1,2}):([0-5]\d):([0-5]\d)(?:\.\d+)?$/i;
const dated = /^(\d{4}-\d{2}-\d{2})[T\s]+(\d{1,2}:[0-5]\d(?::[0-5]\d(?:\.\d+)?)?)(?:\s*Z)?$/i;

/** The day of a dated moment, in days since some day; undefined where there is no such day. */
function dayOf(text: string): number | undefined {
  const day = Date.parse(`${text}T00:00Z`) / 86_400_000;
  const back = Number.isFinite(day) && new Date(day * 86_400_000).toISOString().slice(0, 10);
  return back === text ? day : undefined;
}

/** Midnight from which dated moments count: the earliest day among `texts`. */
export function firstDay(texts: readonly string[]): number | undefined {
  const days = texts
    .map((text) => dayOf(dated.exec(text.trim())?.[1] ?? ''))
    .filter((day) => day !== undefined);
  return days.length > 0 ? Math.min(...days) : undefined;
}

/** The moment as `readQuantity` takes it, or the text as it was typed. */
export function runningHours(typed: string, from: number | undefined): string {
  const text = typed.trim();
  const [, dayText, clock = ''] = dated.exec(text) ?? [];
  if (dayText !== undefined && from !== undefined) {
    const day = dayOf(dayText);
    const hours = wallHours(clock.split(':').length === 2 ? `${clock}:00` : clock);
    if (day !== undefined && hours !== undefined) return `${(day - from) * 24 + hours} h`;
  }
  const hours = wallHours(text);
  return hours === undefined ? typed : `${hours} h`;
}

function wallHours(text: string): number | undefined {
  const found = time.exec(text);
  if (!found) return undefined;
  const [, hour12, minute12 = '0', second12 = '0', half, hour24, minute24, second24] = found;
  if (hour12 === undefined) return Number(hour24) + Number(minute24) / 60 + Number(second24) / 3600;
  const hour = Number(hour12);
  if (hour < 1 || hour > 12) return undefined;
  const noon = half?.toLowerCase() === 'p' ? 12 : 0;
  return (hour % 12) + noon + Number(minute12) / 60 + Number(second12) / 3600;
}
