/** Single entries into a learner's record. Each returns a new record. */
import type { LearnerRecord } from '../files/learner-record.ts';

/** Marks a lesson as read; the first day stands. */
export const withLessonRead = (record: LearnerRecord, lesson: string, on: string): LearnerRecord =>
  record.lessonsRead.some((it) => it.lesson === lesson)
    ? record
    : { ...record, lessonsRead: [...record.lessonsRead, { lesson, on }] };

/** Takes the mark of a lesson off again. */
export const withoutLessonRead = (record: LearnerRecord, lesson: string): LearnerRecord => ({
  ...record,
  lessonsRead: record.lessonsRead.filter((it) => it.lesson !== lesson),
});

/** What is ticked now in the self-check of an exercise, by place from 0. */
export function withTicks(
  record: LearnerRecord,
  exercise: string,
  ticked: number[],
  on: string,
): LearnerRecord {
  const others = record.selfChecks.filter((it) => it.exercise !== exercise);
  return {
    ...record,
    selfChecks: ticked.length > 0 ? [...others, { exercise, ticked, on }] : others,
  };
}

/** Adds one problem that was tried, solved or not. */
export const withProblem = (
  record: LearnerRecord,
  problem: LearnerRecord['problems'][number],
): LearnerRecord => ({ ...record, problems: [...record.problems, problem] });
