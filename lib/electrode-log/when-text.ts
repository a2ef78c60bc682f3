/** An instant in words, as the clock on the wall tells it. */
import { comesTwice, type WallTime, wallTime, zoneMark } from './wall-time.ts';

/** `18:15`, and `1:30 EST` in an hour that comes twice. */
export const clockWords = (instant: number, zone: string): string =>
  wordsOf(wallTime(instant, zone), instant, zone);

function wordsOf(wall: WallTime, instant: number, zone: string): string {
  return comesTwice(instant, zone) ? `${onClock(wall)} ${zoneMark(instant, zone)}` : onClock(wall);
}

/** The time alone on the day that is spoken of, with its day on any other: `2026-03-27, 1:00`. */
export function whenWords(instant: number, zone: string, day: string): string {
  const wall = wallTime(instant, zone);
  const words = wordsOf(wall, instant, zone);
  return wall.day === day ? words : `${wall.day}, ${words}`;
}

/** `02:30` as people write it: `2:30`. */
export const onClock = ({ time }: Pick<WallTime, 'time'>): string => time.replace(/^0/, '');
