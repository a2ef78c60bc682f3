/** What a learner's own graded coupons say about one exercise. It decides nothing. */
import type { Coupon } from '../files/learner-record.ts';
import { wilson } from './wilson.ts';

export interface Readiness {
  graded: number;
  passed: number;
  waiting: number;
  /** Passes since the last coupon that was to be repeated. */
  run: number;
  /** Undefined as long as nothing is graded. */
  range: { low: number; high: number } | undefined;
}

/** Passes in a row after which most shops let a learner go on: common practice, no source. */
export const movesOn = 3;

/** Coupons of one day count in the order in which they were handed in. */
export function readiness(coupons: readonly Coupon[], exercise: string): Readiness {
  const own = coupons
    .filter((it) => it.exercise === exercise)
    .toSorted((a, b) => a.on.localeCompare(b.on));
  const graded = own.filter(({ result }) => result !== 'waiting');
  const passed = graded.filter(({ result }) => result === 'passed').length;
  const lastRepeat = graded.findLastIndex(({ result }) => result === 'repeat');
  return {
    graded: graded.length,
    passed,
    waiting: own.length - graded.length,
    run: graded.length - 1 - lastRepeat,
    range: graded.length > 0 ? wilson(passed, graded.length) : undefined,
  };
}
