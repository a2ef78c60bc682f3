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
    return zone !== '' && zoneOf(zone) !== undefined;
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

/** Whether the wall shows twice what it shows at an instant. */
export function comesTwice(instant: number, zone: string): boolean {
  const offset = offsetAt(instant, zone);
  // No clock was changed in the days around it: that is so for nearly all.
  if ([-dayLength, dayLength].every((by) => offsetAt(instant + by, zone) === offset)) return false;
  return instantsOf(wallTime(instant, zone), zone).length > 1;
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
  return parts
    .filter(({ type }) => type === 'timeZoneName')
    .map(({ value }) => value)
    .join('');
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

/** What is known of a zone. Asking for an offset is slow, and a log names the same days over and over. */
interface Zone {
  format: Intl.DateTimeFormat;
  /** Offsets at the start of days in UTC, by their number since 1970. */
  offsets: Map<number, number>;
}

const zones = new Map<string, Zone>();

/** Throws RangeError for a zone that is not known. */
function zoneOf(name: string): Zone {
  const known = zones.get(name);
  if (known) return known;
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone: name,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  const made = { format, offsets: new Map<number, number>() };
  zones.set(name, made);
  return made;
}

/** Wall time less UTC. Most days have one offset from end to end. */
function offsetAt(instant: number, name: string): number {
  const zone = zoneOf(name);
  const day = Math.floor(instant / dayLength);
  const first = atStartOf(day, zone);
  return first === atStartOf(day + 1, zone) ? first : offsetAsked(instant, zone);
}

function atStartOf(day: number, zone: Zone): number {
  const known = zone.offsets.get(day);
  if (known !== undefined) return known;
  const offset = offsetAsked(day * dayLength, zone);
  zone.offsets.set(day, offset);
  return offset;
}

function offsetAsked(instant: number, { format }: Zone): number {
  const found = {} as Record<Intl.DateTimeFormatPartTypes, number>;
  for (const { type, value } of format.formatToParts(instant)) found[type] = Number(value);
  const { year, month, day, hour: hours, minute: minutes, second } = found;
  return Date.UTC(year, month - 1, day, hours, minutes, second) - instant;
}
