/** The grading of an instructor: a rubric and the coupons of each exercise. Kept in the browser. */
import * as v from 'valibot';
import type { FileKind } from './file-kind.ts';

const short = v.pipe(v.string(), v.maxLength(200));

const pointRubric = v.object({
  weight: v.pipe(v.number(), v.minValue(0), v.maxValue(1000)),
  must: v.boolean(),
  limit: short,
});

const coupon = v.object({
  /** A number or initials; a name is never needed. */
  learner: short,
  attempt: short,
  /** Day as written: 2026-03-02. */
  on: short,
  grader: short,
  note: v.pipe(v.string(), v.maxLength(2000)),
  /** What was read, by point of the grading. */
  readings: v.record(short, short),
});

const exercise = v.object({
  rubric: v.object({
    passMark: v.pipe(v.number(), v.minValue(0), v.maxValue(100)),
    points: v.record(short, pointRubric),
  }),
  coupons: v.array(coupon),
});

const book = v.object({ exercises: v.record(short, exercise) });

export type GradedCoupon = v.InferOutput<typeof coupon>;
export type GradedExercise = v.InferOutput<typeof exercise>;
export type GradingBook = v.InferOutput<typeof book>;

export const gradingBook: FileKind<GradingBook> = {
  name: 'grading-book',
  title: 'a grading book',
  version: 1,
  schema: book,
};

/** A book in which nothing is graded yet. */
export const emptyBook = (): GradingBook => ({ exercises: {} });
