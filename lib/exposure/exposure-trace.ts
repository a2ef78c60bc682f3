/**
 * The clock of a container of electrodes through its log, as a line to draw: hours on it over
 * hours on the wall, and where the electrodes were meanwhile.
 */
import { type Bake, ovenRules } from '../tables/exposure-d1.1.ts';
import { second } from './exposure-clock.ts';
import { ExposureLog, type LogEvent } from './exposure-log.ts';

export interface Stay {
  from: number;
  to: number;
  place: 'container' | 'air' | 'oven' | 'bake';
}

export interface ExposureTrace {
  /** Longest time in open air, in hours. */
  limit: number;
  /** Corners of the line: the hour of the day, and what the clock would show if they came out then. */
  line: { time: number; hours: number }[];
  /** One after the other, from the first row to the moment asked about. */
  stays: Stay[];
}

/** `events` must be a log that ExposureLog takes; `until` is not before its end. */
export function exposureTrace(
  limit: number,
  events: readonly LogEvent[],
  until: number,
  rebake: Bake = ovenRules.rebake,
): ExposureTrace {
  const log = new ExposureLog(limit, undefined, rebake);
  const { clock } = log;
  const line: ExposureTrace['line'] = [];
  const stays: Stay[] = [];
  const mark = () => line.push({ time: clock.time, hours: clock.hoursOut });
  const stay = (from: number, to: number, place: Stay['place']) => {
    const last = stays.at(-1);
    if (last?.place === place && last.to === from) last.to = to;
    else if (to > from) stays.push({ from, to, place });
  };
  const advance = (to: number) => {
    const from = clock.time;
    // The clock jumps when a hold is whole, so it is read just before and right after.
    log.advance(Math.max(from, to - 2 * second));
    mark();
    stay(from, to, clock.place);
    log.advance(to);
    mark();
  };
  const reach = (to: number) => {
    for (let turns = 0; turns < 2; turns++) {
      const next = [clock.isHolding ? clock.holdEnds : to, clock.stayEnds ?? to].filter(
        (time) => time > clock.time && time < to,
      );
      if (next.length > 0) advance(Math.min(...next));
    }
    if (to > clock.time) advance(to);
  };
  for (const [index, event] of events.entries()) {
    if (index === 0) clock.time = event.at;
    else reach(event.at);
    const before = clock.hoursOut;
    log.add(event, index + 1);
    if (clock.time > event.at) {
      line.push({ time: event.at, hours: before }, { time: clock.time, hours: before });
      stay(event.at, clock.time, 'bake');
    }
    mark();
  }
  reach(until);
  return { limit, line, stays };
}
