import type { GradedCoupon } from '../files/grading-book.ts';
import type { Coupon } from '../files/learner-record.ts';
import type { Verdict } from './grade.ts';

/** A graded coupon as a learner's record holds it. `today` stands where no day was written. */
export function handedInOf(
  slug: string,
  coupon: GradedCoupon,
  verdict: Verdict,
  today: string,
): Coupon {
  const { on, grader, note, readings } = coupon;
  return {
    exercise: slug,
    on: /^\d{4}-\d{2}-\d{2}$/.test(on) && !Number.isNaN(Date.parse(on)) ? on : today,
    result: verdict.result,
    readings: Object.entries(readings).map(([item, reading]) => ({ item, reading })),
    grader,
    missed: verdict.points.filter(({ result }) => result === 'missed').map(({ item }) => item),
    note: [note, verdict.reason]
      .filter((text) => text !== '')
      .join('. ')
      .slice(0, 2000),
  };
}
