/**
 * What still stands between a learner and the next exercise, from the exercise's own grading and the
 * learner's graded coupons. It decides nothing: the instructor may want more, or less.
 */
import type { Coupon } from '../files/learner-record.ts';
import { movesOn, readiness } from './readiness.ts';

export interface ExerciseAsks {
  id: string;
  /** What the coupon is judged by: size, undercut, craters. */
  points: readonly string[];
  /** Where to stop until somebody has looked. May hold quantities in braces. */
  holdPoints: readonly string[];
}

/** Sentences, the most pressing first; none when nothing is left to count. */
export function wanted(coupons: readonly Coupon[], asks: ExerciseAsks): string[] {
  const { graded, waiting, run } = readiness(coupons, asks.id);
  const said: string[] = [];
  const { open, since } = openPoints(coupons, asks.id);
  if (since && open.length > 0)
    said.push(`Not met in the coupon of ${since.on}: ${open.join(', ')}.`);
  else if (since)
    said.push(
      `The coupon of ${since.on} is to be repeated. Ask ${since.grader || 'who graded it'} what to change.`,
    );
  if (waiting > 0)
    said.push(
      waiting === 1
        ? 'One coupon waits for its grade.'
        : `${waiting} coupons wait for their grade.`,
    );
  if (run === 0 && asks.points.length > 0) said.push(`Looked at: ${asks.points.join(', ')}.`);
  if (run === 0) said.push(...asks.holdPoints.map((text) => `Stop and show it: ${lower(text)}`));
  if (graded > 0 && run < movesOn) {
    const more = movesOn - run;
    said.push(
      `${more} more ${more === 1 ? 'pass' : 'passes'} in a row, where your shop asks for ${movesOn} (common practice).`,
    );
  }
  return said;
}

/** The last graded coupon where it is to be repeated, and what was missed in it. */
function openPoints(coupons: readonly Coupon[], exercise: string) {
  const last = coupons
    .filter((it) => it.exercise === exercise && it.result !== 'waiting')
    .toSorted((a, b) => a.on.localeCompare(b.on))
    .at(-1);
  const since = last?.result === 'repeat' ? last : undefined;
  return { since, open: [...new Set(since?.missed ?? [])] };
}

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
