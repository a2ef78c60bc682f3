/** A class board: who is where, what waits, who was away, which booth burns what. */
import * as v from 'valibot';
import type { FileKind } from './file-kind.ts';
import { day, handedIn } from './learner-record.ts';

const short = v.pipe(v.string(), v.maxLength(200));
const slug = v.pipe(v.string(), v.regex(/^[a-z0-9-]{0,80}$/, 'a name of small letters and dashes'));
const dayOrNone = v.union([v.literal(''), day], 'a day is written like 2026-03-02');
const minutes = v.pipe(v.number(), v.minValue(0), v.maxValue(100_000));

const learner = v.object({
  /** A number or initials; a name is never needed. */
  learner: v.pipe(short, v.minLength(1, 'a learner has a number or initials')),
  /** The exercise somebody set by hand; empty: the first one not passed. */
  at: slug,
  /** Here tonight. */
  here: v.boolean(),
  coupons: v.array(handedIn),
  absences: v.array(v.object({ on: day, minutes })),
  /** Minutes caught up since. */
  caughtUp: minutes,
  /** Day on which learner and instructor signed the safety gate; boards before it have none. */
  gate: v.optional(dayOrNone),
  /** Day of the test, where there is one, and of the last weld somebody saw. */
  tested: dayOrNone,
  lastWelded: dayOrNone,
});

export const machineCurrents = ['DC', 'AC', 'AC and DC'] as const;
export const machineSettings = ['dial', 'digits', 'taps'] as const;

const booth = v.object({
  booth: v.pipe(short, v.minLength(1, 'a booth has a number')),
  machine: short,
  /** Largest electrode that its machine burns all evening, inches. */
  largest: v.pipe(v.number(), v.minValue(0), v.maxValue(1)),
  /** Highest current on its plate, amperes. */
  most: v.optional(v.pipe(v.number(), v.minValue(0), v.maxValue(5000))),
  current: v.optional(v.picklist(machineCurrents)),
  setBy: v.optional(v.picklist(machineSettings)),
  /** Clamp meter less dial, amperes; unknown until somebody has measured. */
  offset: v.optional(v.pipe(v.number(), v.minValue(-500), v.maxValue(500))),
  down: v.boolean(),
});

const board = v.object({
  name: short,
  code: v.picklist(['AWS D1.1', 'ASME IX']),
  learners: v.pipe(v.array(learner), v.maxLength(500, 'more than 500 learners')),
  booths: v.pipe(v.array(booth), v.maxLength(500, 'more than 500 booths')),
});

export type ClassBoard = v.InferOutput<typeof board>;
export type BoardLearner = v.InferOutput<typeof learner>;
export type BoardBooth = v.InferOutput<typeof booth>;

export const classBoard: FileKind<ClassBoard> = {
  name: 'class-board',
  title: 'a class board',
  version: 1,
  schema: board,
};

/** A learner of whom nothing is known but the number or the initials. */
export const newLearner = (name: string): BoardLearner => ({
  learner: name,
  at: '',
  here: true,
  coupons: [],
  absences: [],
  caughtUp: 0,
  gate: '',
  tested: '',
  lastWelded: '',
});
