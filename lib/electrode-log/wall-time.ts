/**
 * Between an instant and what calendar and clock on the wall show in a time zone. Instants are
 * milliseconds since 1970 in UTC, on whole minutes; zones carry their names in the IANA database.
 */

/** Day as `2026-03-08`, time as `18:15`. */
export interface WallTime {
  day: string;
  time: string;
}

const minute = 60_000;
const hour = 60 * minute;
const dayLength = 24 * hour;

/** Whether this machine knows a zone of that name. */
export function isZone(zone: string): boolean {
  try {
    return zone !== '' && formatter(zone) !== undefined;
  } catch {
    return false;
  }
}

/** What the wall shows at an instant. Throws RangeError for a zone that is not known. */
export function wallTime(instant: number, zone: string): WallTime {
  return written(instant + offsetAt(instant, zone));
}

/** The instants at which the wall shows this: one, none where clocks jump over it, or two. */
export function instantsOf(wall: WallTime, zone: string): number[] {
  const shown = asIfUtc(wall);
  const offsets = new Set([-dayLength, 0, dayLength].map((by) => offsetAt(shown + by, zone)));
  return [...offsets]
    .map((offset) => shown - offset)
    .filter((instant) => instant + offsetAt(instant, zone) === shown)
    .sort((a, b) => a - b);
}

/** For a time that does not exist: the last that the wall shows before the jump and the first after it. */
export function jumpOver(wall: WallTime, zone: string): { from: WallTime; to: WallTime } {
  const shown = asIfUtc(wall);
  let [before, after] = [shown - dayLength, shown + dayLength];
  const start = offsetAt(before, zone);
  while (after - before > minute) {
    const middle = before + Math.floor((after - before) / 2 / minute) * minute;
    if (offsetAt(middle, zone) === start) before = middle;
    else after = middle;
  }
  return { from: written(after + start), to: wallTime(after, zone) };
}

/** Which of two equal wall times an instant is, in short: `EST`, `GMT+1`. */
export function zoneMark(instant: number, zone: string): string {
  const parts = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    timeZoneName: 'short',
  }).formatToParts(instant);
  return parts.find(({ type }) => type === 'timeZoneName')?.value ?? '';
}

const two = (number: number): string => String(number).padStart(2, '0');

function written(shown: number): WallTime {
  const date = new Date(shown);
  return {
    day: date.toISOString().slice(0, 10),
    time: `${two(date.getUTCHours())}:${two(date.getUTCMinutes())}`,
  };
}

const asIfUtc = ({ day, time }: WallTime): number => Date.parse(`${day}T${time}:00Z`);

const formatters = new Map<string, Intl.DateTimeFormat>();

function formatter(zone: string): Intl.DateTimeFormat {
  const known = formatters.get(zone);
  if (known) return known;
  const made = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  formatters.set(zone, made);
  return made;
}

/** Asked for once: a log names the same few days over and over. */
const offsets = new Map<string, number>();

/** Wall time less UTC. Most days have one offset from end to end, and asking for it is slow. */
function offsetAt(instant: number, zone: string): number {
  const start = Math.floor(instant / dayLength) * dayLength;
  const first = askedOnce(start, zone);
  return first === askedOnce(start + dayLength, zone) ? first : offsetAsked(instant, zone);
}

function askedOnce(instant: number, zone: string): number {
  const key = `${zone} ${instant}`;
  const known = offsets.get(key);
  if (known !== undefined) return known;
  const offset = offsetAsked(instant, zone);
  offsets.set(key, offset);
  return offset;
}

function offsetAsked(instant: number, zone: string): number {
  const found: Record<string, number> = {};
  for (const { type, value } of formatter(zone).formatToParts(instant)) found[type] = Number(value);
  const { year = 0, month = 1, day = 1, hour: hours = 0, minute: minutes = 0, second = 0 } = found;
  return Date.UTC(year, month - 1, day, hours, minutes, second) - instant;
}
