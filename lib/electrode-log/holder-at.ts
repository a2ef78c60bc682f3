/** The state of one holder at a moment, and what may still be done with it until when. */
import type { Citation } from '../calculation.ts';
import type { LogEvent, Told } from '../exposure/exposure-log.ts';
import { type ExposureNow, type ExposureState, exposureNow } from '../exposure/exposure-now.ts';
import { type Holder, type HolderRow, instantOf } from '../files/electrode-log.ts';
import { NoAnswer } from '../no-answer.ts';
import { remembered } from './remembered.ts';
import { wallTime } from './wall-time.ts';
import { whenWords } from './when-text.ts';

const hour = 3_600_000;
/** A warning comes so long before the time in open air is over, in hours. */
export const warningBefore = 0.5;

export interface Counted {
  counted: true;
  state: ExposureState | 'being rebaked';
  /** What to do now. */
  next: string;
  /** Instants: the last moment to have them back, the first to issue them, the end of a rebake. */
  backBy?: number;
  readyFrom?: number;
  bakedAt?: number;
  /** Hours on the clock if they come out now, and hours left on it. */
  hoursOut: number;
  hoursLeft: number;
  mayReturn: boolean;
  mayRebake: boolean;
  warning?: 'soon' | 'over';
  /** The longest time in open air, in hours, with the row of the table that gives it. */
  limit: number;
  row: string;
  cite: Citation;
  /** What each row did. */
  reasons: string[];
}

export interface NotCounted {
  counted: false;
  /** Why nothing is counted; ends without a period. */
  why: string;
  /** Place of the row that cannot follow the one above it, from 0. */
  row?: number;
  /** What is known of them all the same. */
  marked?: 'scrap' | 'practice only, tagged';
}

/**
 * `at` is an instant; rows after it are left out. Days and times are told as the clock of the zone
 * shows them.
 */
export const holderAt = remembered(askedAt);

function askedAt(holder: Holder, at: number, zone: string): Counted | NotCounted {
  const rows = holder.rows.filter((row) => instantOf(row.at) <= at);
  const clock = logClock(rows, zone, at);
  const bakedAt = bakeEnd(rows, at);
  try {
    const found = exposureNow({
      classification: holder.classification,
      designator: holder.designator,
      events: clock.events,
      now: bakedAt === undefined && rows.length > 0 ? clock.hours(at) : undefined,
      told: clock.told,
    });
    const instant = (hours: number | undefined) =>
      hours === undefined ? undefined : clock.instant(hours);
    const { state, next, limit, row, cite, hoursOut, hoursLeft, mayRebake, reasons } = found;
    const facts = { limit, row, cite, hoursOut, hoursLeft, mayRebake, reasons };
    if (bakedAt !== undefined)
      return {
        ...facts,
        counted: true,
        state: 'being rebaked',
        next: `Leave them in until ${clock.told.time(clock.hours(bakedAt))}. ${asItEnds(found)}`,
        bakedAt,
        mayReturn: false,
        mayRebake: false,
      };
    return {
      ...facts,
      counted: true,
      state,
      next: rows.length === 0 ? `Nothing is logged yet. ${next}` : next,
      ...given('backBy', instant(found.backBy)),
      ...given('readyFrom', instant(found.readyFrom)),
      mayReturn: found.mayReturnToOven,
      ...given('warning', warningOf(found)),
    };
  } catch (thrown) {
    if (!(thrown instanceof NoAnswer)) throw thrown;
    const [, number] = /^events\.(\d+)\./.exec(String(thrown.field)) ?? [];
    return {
      counted: false,
      why: thrown.message,
      ...given('row', number === undefined ? undefined : Number(number) - 1),
      ...given('marked', markOf(rows)),
    };
  }
}

/** The rows on one running clock, in hours from the first of them, and how that clock is told. */
export function logClock(rows: readonly HolderRow[], zone: string, near: number) {
  const start = rows[0] ? instantOf(rows[0].at) : near;
  const { day } = wallTime(near, zone);
  const instant = (hours: number) => start + Math.round(hours * 60) * 60_000;
  const hours = (at: number) => (at - start) / hour;
  const told: Told = { time: (at) => whenWords(instant(at), zone, day) };
  const events: LogEvent[] = rows.map((row) => ({
    event: row.event,
    at: hours(instantOf(row.at)),
    temperature: row.temperature && {
      value: row.temperature.value,
      system: row.temperature.unit === 'degF' ? 'us' : 'metric',
    },
    hours: row.hours,
  }));
  return { events, told, hours, instant };
}

/** Rain and a tag need no clock. */
function markOf(rows: readonly HolderRow[]): NotCounted['marked'] {
  if (rows.some(({ event }) => event === 'wet')) return 'scrap';
  return rows.some(({ event }) => event === 'tagged') ? 'practice only, tagged' : undefined;
}

/** The end of a rebake that goes on at `at`. */
function bakeEnd(rows: readonly HolderRow[], at: number): number | undefined {
  const last = rows.at(-1);
  if (last?.event !== 'rebaked') return undefined;
  const end = instantOf(last.at) + (last.hours ?? 0) * hour;
  return end > at ? end : undefined;
}

const asItEnds = ({ state }: ExposureNow): string =>
  state === 'out, within its time'
    ? 'Then their clock starts afresh.'
    : 'It does not make them low-hydrogen again.';

function warningOf({ state, hoursLeft }: ExposureNow): Counted['warning'] {
  if (state === 'out too long') return 'over';
  return state === 'out, within its time' && hoursLeft <= warningBefore ? 'soon' : undefined;
}

/** A property that is left out where there is no value for it. */
const given = <K extends string, T>(key: K, value: T | undefined): { [key in K]?: T } =>
  value === undefined ? {} : ({ [key]: value } as { [key in K]: T });
