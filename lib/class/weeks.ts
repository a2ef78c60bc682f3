/** Which exercise falls into which week, by booth hours. */
import { atBooth, hoursOf, type Turn } from './turns.ts';

/** A part of an exercise; the parts of one add up to 1. */
export interface Share {
  turn: Turn;
  share: number;
}

export interface Week {
  /** From 1; 0 is what no week has room for. */
  number: number;
  supply: number;
  /** Booth hours that are asked for. */
  demand: number;
  shares: Share[];
}

/**
 * Exercises with a week of their own go there, whatever room it has. The others follow one another
 * into the room that is left. What is left over when the term is full comes last, as week 0.
 */
export function weeksOf(turns: readonly Turn[], byWeek: readonly number[]): Week[] {
  const weeks = byWeek.map(
    (supply, at): Week => ({ number: at + 1, supply, demand: 0, shares: [] }),
  );
  const over: Week = { number: 0, supply: 0, demand: 0, shares: [] };
  const put = (week: Week, turn: Turn, share: number) => {
    if (atBooth(turn)) week.demand += hoursOf(turn) * share;
    week.shares.push({ turn, share });
  };
  for (const turn of turns) {
    const week = turn.week === undefined ? undefined : weeks[turn.week - 1];
    if (week) put(week, turn, 1);
  }
  let at = 0;
  const room = () => (weeks[at] as Week).supply - (weeks[at] as Week).demand;
  for (const turn of turns) {
    if (turn.week !== undefined && weeks[turn.week - 1]) continue;
    const hours = atBooth(turn) ? hoursOf(turn) : 0;
    // Without booth hours it goes beside whatever the booths do by then.
    if (hours === 0) {
      put(weeks[Math.min(at, weeks.length - 1)] ?? over, turn, 1);
      continue;
    }
    let rest = hours;
    while (rest > 1e-9) {
      while (at < weeks.length && room() <= 1e-9) at += 1;
      const week = weeks[at] ?? over;
      const hoursHere = at < weeks.length ? Math.min(rest, room()) : rest;
      put(week, turn, hoursHere / hours);
      rest -= hoursHere;
    }
  }
  const sorted = (week: Week): Week => ({
    ...week,
    shares: week.shares.sort((a, b) => turns.indexOf(a.turn) - turns.indexOf(b.turn)),
  });
  return (over.shares.length > 0 ? [...weeks, over] : weeks).map(sorted);
}
