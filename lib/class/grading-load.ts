/** How long the instructor grades. Five to eight minutes a coupon is custom. */
import { attemptsOf, type Turn } from './turns.ts';

/** For one coupon: common practice, no source. */
export const gradingMinutes = { from: 5, to: 8 } as const;

export interface GradingLoad {
  /** All that comes off the booths and benches with a weld on it. */
  attempts: number;
  /** The last one of each learner and exercise, and one for each repeat of it. */
  graded: number;
  /** Hours of the term for the graded ones. */
  from: number;
  to: number;
}

/** Counts only exercises in which electrodes burn. */
export function gradingLoad(turns: readonly Turn[]): GradingLoad {
  const welded = turns.filter(({ exercise }) => exercise.rods.length > 0);
  const sum = (of: (turn: Turn) => number) => welded.reduce((total, turn) => total + of(turn), 0);
  const graded = sum((turn) => attemptsOf({ ...turn, attempts: Math.min(1, turn.attempts) }));
  return {
    attempts: sum(attemptsOf),
    graded,
    from: (graded * gradingMinutes.from) / 60,
    to: (graded * gradingMinutes.to) / 60,
  };
}
