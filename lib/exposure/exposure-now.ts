/**
 * The state of one container or quiver at a moment, and what may still be done with it. The
 * calculator and the electrode log both ask here.
 */

import type { Citation } from '../calculation.ts';
import type { designators } from '../inputs/classification.ts';
import { NoAnswer } from '../no-answer.ts';
import { bakeOf, type ExposedElectrode, exposureOf } from '../tables/exposure-d1.1.ts';
import { wallClock } from '../text/clock-text.ts';
import { ExposureLog, type exposureStates, type LogEvent, type Told } from './exposure-log.ts';
import { refuseOvenAdvice } from './low-hydrogen-only.ts';

export type ExposureState = (typeof exposureStates)[number];

export interface ExposureNow {
  state: ExposureState;
  /** The moment that this holds for, in hours on the log’s clock. */
  until: number;
  /** Hours on the clock if they come out now, and hours left on it. */
  hoursOut: number;
  hoursLeft: number;
  mayReturnToOven: boolean;
  mayRebake: boolean;
  /** On the log’s clock: the last moment to return them, or the first to issue them again. */
  backBy: number | undefined;
  readyFrom: number | undefined;
  /** What each row did. */
  reasons: string[];
  /** What to do now. */
  next: string;
  /** The longest time in open air, in hours, with the row of the table that gives it. */
  limit: number;
  row: string;
  cite: Citation;
}

/** Hours, far below a second. */
const sameMoment = 1e-9;

/**
 * `events` in order, in hours on one clock; `now` on the same clock, or the end of the last row.
 * Throws NoAnswer for an electrode that no oven may hold, and for a row that cannot follow the last.
 */
export function exposureNow(asked: {
  classification: ExposedElectrode;
  designator: (typeof designators)[number];
  events: readonly LogEvent[];
  now: number | undefined;
  told?: Told;
}): ExposureNow {
  const { classification, designator, events, now, told } = asked;
  refuseOvenAdvice(classification, designator);
  const { hours: limit, row, cite } = exposureOf(classification, designator);
  const log = new ExposureLog(limit, told, bakeOf(classification));
  for (const [index, event] of events.entries()) log.add(event, index + 1);
  const { clock } = log;
  const time = told?.time ?? wallClock;
  // The end of a rebake is a sum of hours: a moment that falls on it may miss it by a rounding.
  if (now !== undefined && now < clock.time - sameMoment)
    throw new NoAnswer(`${time(now)} lies before the end of the log, ${time(clock.time)}`, 'now');
  log.advance(Math.max(now ?? clock.stayEnds ?? clock.time, clock.time));
  const { state } = log;
  const within = state === 'out, within its time';
  const usable = within || state.startsWith('in the oven') || state === 'sealed';
  const hoursLeft = usable ? Math.max(0, limit - clock.hoursOut) : 0;
  const backBy = within ? clock.time + hoursLeft : undefined;
  const readyFrom = state === 'in the oven, holding' ? clock.holdEnds : undefined;
  const when = backBy ?? readyFrom;
  const at = when === undefined ? '' : ` ${time(when)}.`;
  return {
    state,
    until: clock.time,
    hoursOut: clock.hoursOut,
    hoursLeft,
    mayReturnToOven: within,
    mayRebake: log.mayRebake,
    backBy,
    readyFrom,
    reasons: log.reasons,
    next: `${advice[state]}${at}`,
    limit,
    row,
    cite,
  };
}

const advice: Record<ExposureState, string> = {
  sealed: 'Keep the container shut, dry and whole until it is needed.',
  'out, within its time': 'Use them, or have them back in the oven by',
  'in the oven, holding':
    'Taken out before the hold is whole, the clock has run on. They are ready at',
  'in the oven, ready': 'They may be issued.',
  'out too long': 'Rebake them once, or tag them for practice pads. They are not low-hydrogen now.',
  'practice only, tagged':
    'Practice pads only. Tag them now, before somebody takes one for a coupon.',
  scrap: 'Into the scrap bin, all of them.',
};
