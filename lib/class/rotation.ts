/**
 * Who stands beside the booths when there are more learners than booths: rounds of one evening, learners
 * by turns, so that everybody has the same time at an arc.
 */
import type { Supply, Term } from './term.ts';

/** Minutes of a round; long enough for one coupon of most exercises, short enough to stay warm. */
export const roundMinutes = 40;

export interface Rotation {
  /** Clock hours. */
  rounds: { from: number; to: number }[];
  /** How many stand beside the booths in each round. */
  beside: number;
  /** By evening, by round: the places of learners, from 1. Ends when everybody has had a turn. */
  evenings: number[][][];
}

/** Undefined where everybody has a booth, or no arc burns. */
export function rotationOf(
  { learners, booths }: Pick<Term, 'learners' | 'booths'>,
  { firstArc, arcHours }: Pick<Supply, 'firstArc' | 'arcHours'>,
): Rotation | undefined {
  const beside = learners - booths;
  if (beside <= 0 || booths <= 0 || arcHours <= 0) return undefined;
  const count = Math.max(1, Math.round((arcHours * 60) / roundMinutes));
  const length = arcHours / count;
  const rounds = Array.from({ length: count }, (_, at) => ({
    from: firstArc + at * length,
    to: firstArc + (at + 1) * length,
  }));
  const evenings: number[][][] = [];
  for (let next = 0; next < learners; ) {
    const evening = rounds.map(() => {
      const places = Array.from({ length: beside }, (_, at) => ((next + at) % learners) + 1);
      next += beside;
      return places;
    });
    evenings.push(evening);
  }
  return { rounds, beside, evenings };
}
