/** A class plan as typed: which exercises, how many learners, what the yard sells. */
import * as v from 'valibot';
import { settings } from '../class/settings.ts';
import type { FileKind } from './file-kind.ts';

const short = v.pipe(v.string(), v.maxLength(200));
const typed = v.optional(v.pipe(v.string(), v.maxLength(100)), '');
const slug = v.pipe(v.string(), v.regex(/^[a-z0-9-]{1,80}$/, 'a name of small letters and dashes'));

export const plannedExercise = v.object({
  exercise: slug,
  attempts: typed,
  learners: typed,
  minutes: typed,
  repeats: typed,
  week: typed,
});

const settingEntries = Object.fromEntries(Object.keys(settings).map((name) => [name, typed]));

const plan = v.object({
  name: short,
  /** In which units a number without one stands. */
  units: v.picklist(['us', 'metric']),
  /** As typed; empty is the standard value. */
  settings: v.object(settingEntries as Record<keyof typeof settings, typeof typed>),
  exercises: v.pipe(v.array(plannedExercise), v.maxLength(300, 'more than 300 exercises')),
  /** By section, kind of electrode or disc; in whatever money the instructor counts. */
  prices: v.record(short, short),
});

export type ClassPlan = v.InferOutput<typeof plan>;
export type PlannedExercise = v.InferOutput<typeof plannedExercise>;

export const classPlan: FileKind<ClassPlan> = {
  name: 'class-plan',
  title: 'a class plan',
  version: 1,
  schema: plan,
};
