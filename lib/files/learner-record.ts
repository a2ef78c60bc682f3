/** What one learner has read, practised and handed in. Kept on the learner's own device. */
import * as v from 'valibot';
import type { FileKind } from './file-kind.ts';

/** A calendar day where the reader is: `2026-03-02`. */
export const day = v.pipe(v.string(), v.isoDate('a day is written like 2026-03-02'));
const short = v.pipe(v.string(), v.maxLength(200));
const slug = v.pipe(v.string(), v.regex(/^[a-z0-9-]{1,80}$/, 'a name of small letters and dashes'));

export const handedIn = v.object({
  exercise: slug,
  on: day,
  /** `waiting`: nobody has graded it yet. */
  result: v.picklist(['waiting', 'passed', 'repeat']),
  /** What was measured, as written down: "leg 5/16 in". */
  readings: v.array(v.object({ item: short, reading: short })),
  /** Who graded it, by initials; empty while it waits. */
  grader: short,
  note: v.pipe(v.string(), v.maxLength(2000)),
  /** Points of the grading that were not met. */
  missed: v.optional(v.array(short)),
});

const record = v.object({
  /** A number or initials; a name is never needed. */
  learner: short,
  lessonsRead: v.array(v.object({ lesson: slug, on: day })),
  /** Questions of a self-check that were ticked, by their place from 0. */
  selfChecks: v.array(v.object({ exercise: slug, ticked: v.array(v.number()), on: day })),
  coupons: v.array(handedIn),
  problems: v.array(
    v.object({
      calculation: slug,
      set: v.number(),
      place: v.number(),
      solved: v.boolean(),
      on: day,
    }),
  ),
});

export type LearnerRecord = v.InferOutput<typeof record>;
export type Coupon = v.InferOutput<typeof handedIn>;

export const learnerRecord: FileKind<LearnerRecord> = {
  name: 'learner-record',
  title: 'a learner’s record',
  version: 1,
  schema: record,
};

/** A record in which nothing is done yet. */
export const emptyRecord = (): LearnerRecord => ({
  learner: '',
  lessonsRead: [],
  selfChecks: [],
  coupons: [],
  problems: [],
});
