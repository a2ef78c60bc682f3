/** Day and time as typed, with the reader's time zone, as an instant. */
import { readDay } from '../text/day-text.ts';
import { instantsOf, jumpOver, type WallTime, wallTime, zoneMark } from './wall-time.ts';
import { onClock } from './when-text.ts';

export interface TypedWhen {
  /** `2026-03-26`; empty where the field holds none. */
  day: string;
  /** `18:15`. */
  time: string;
  /** In an hour that comes twice: `first` or `second`. */
  which?: string;
}

export type ReadWhen =
  | { ok: true; at: number; twice?: readonly Choice[] }
  | {
      ok: false;
      field: 'day' | 'time' | 'which';
      /** A phrase that begins with the field's name. */
      problem: string;
      /** The two instants of an hour that comes twice. */
      twice?: readonly Choice[];
    };

/** One of two instants: `first`, `the first time (EDT)`. */
export interface Choice {
  which: 'first' | 'second';
  words: string;
}

/**
 * An hour that comes twice, when clocks go back, needs `which`; one that is jumped over is refused.
 */
export function readWhen({ day, time, which }: TypedWhen, zone: string): ReadWhen {
  if (day === '') return { ok: false, field: 'day', problem: 'Day needs a whole date' };
  const read = readDay(day);
  if ('problem' in read) return { ok: false, field: 'day', problem: `Day ${read.problem}` };
  const clock = /^(\d\d?):([0-5]\d)(?::[0-5]\d)?$/.exec(time.trim());
  if (!clock || Number(clock[1]) > 23)
    return {
      ok: false,
      field: 'time',
      problem: 'Time needs hours and minutes, from 0:00 to 23:59',
    };
  const wall: WallTime = { day: read.day, time: `0${clock[1]}:${clock[2]}`.slice(-5) };
  const instants = instantsOf(wall, zone);
  const [first, second] = instants;
  if (first === undefined) return { ok: false, field: 'time', problem: jumped(wall, zone) };
  if (second === undefined) return { ok: true, at: first };
  const twice: Choice[] = instants.map((at, place) => ({
    which: place === 0 ? 'first' : 'second',
    words: `the ${place === 0 ? 'first' : 'second'} time (${zoneMark(at, zone)})`,
  }));
  if (which === 'first') return { ok: true, at: first, twice };
  if (which === 'second') return { ok: true, at: second, twice };
  return {
    ok: false,
    field: 'which',
    twice,
    problem: `Which one needs a choice: clocks go back, and ${onClock(wall)} comes twice on ${wall.day}`,
  };
}

function jumped(wall: WallTime, zone: string): string {
  const { from, to } = jumpOver(wall, zone);
  const after = to.day === from.day ? onClock(to) : `${to.day}, ${onClock(to)}`;
  return `Time ${onClock(wall)} does not exist on ${wall.day}: clocks go from ${onClock(from)} to ${after}`;
}

/** An instant as the fields hold it. */
export function typedWhen(instant: number, zone: string): TypedWhen {
  const wall = wallTime(instant, zone);
  const [, second] = instantsOf(wall, zone);
  if (second === undefined) return wall;
  return { ...wall, which: second === instant ? 'second' : 'first' };
}
