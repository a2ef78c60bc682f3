/** The electrodes of a class by kind. */
import type { Stage } from './class-exercise.ts';
import { attemptsOf, type Turn } from './turns.ts';

/** Pounds in the can that the trade sells most; common practice. */
export const canPounds = 10;

export interface RodNeed {
  kind: string;
  /** Burned in all attempts. */
  burned: number;
  /** Burned, and the spare for stuck and broken ones. */
  pieces: number;
  pounds: number;
  cans: number;
}

/** Spare as a share of what is burned, by stage. */
export type Spare = Readonly<Record<Stage, number>>;

/** One row for each kind that is burned, in the order in which it is needed first. Pounds. */
export function rodsOf(turns: readonly Turn[], spare: Spare): RodNeed[] {
  const kinds = new Map<string, { burned: number; wanted: number; each: number }>();
  for (const turn of turns)
    for (const { kind, each, count } of turn.exercise.rods) {
      const found = kinds.get(kind) ?? { burned: 0, wanted: 0, each };
      kinds.set(kind, found);
      const burned = count * attemptsOf(turn);
      found.burned += burned;
      found.wanted += burned * (1 + spare[turn.exercise.stage]);
    }
  return [...kinds]
    .filter(([, { burned }]) => burned > 0)
    .map(([kind, { burned, wanted, each }]) => {
      const pieces = Math.ceil(wanted - 1e-9);
      const pounds = pieces * each;
      return { kind, burned, pieces, pounds, cans: Math.ceil(pounds / canPounds - 1e-9) };
    });
}
