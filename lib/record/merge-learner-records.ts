/** Two records of one learner in one: whatever stands in either stands in the result. */
import type { LearnerRecord } from '../files/learner-record.ts';
import { mergeCoupons } from './merge-coupons.ts';

/**
 * The order of the two makes no difference, but for the learner's number: that of `own` stands if it
 * has one. A lesson keeps the day it was first read; what is the same in both stands once; what
 * stands several times in one, as two equal coupons of a day do, keeps its number. A graded coupon
 * takes the place of the one that waited for it.
 */
export function mergeLearnerRecords(own: LearnerRecord, other: LearnerRecord): LearnerRecord {
  return {
    learner: own.learner || other.learner,
    lessonsRead: byDay(
      [...Map.groupBy([...own.lessonsRead, ...other.lessonsRead], ({ lesson }) => lesson)].map(
        ([lesson, same]) => ({ lesson, on: same.map(({ on }) => on).sort()[0] as string }),
      ),
    ),
    selfChecks: byDay(
      [...Map.groupBy([...own.selfChecks, ...other.selfChecks], (it) => it.exercise)].map(
        ([exercise, same]) => ({
          exercise,
          ticked: [...new Set(same.flatMap(({ ticked }) => ticked))].sort((a, b) => a - b),
          on: same
            .map(({ on }) => on)
            .sort()
            .at(-1) as string,
        }),
      ),
    ),
    coupons: inOrder(mergeCoupons(own.coupons, other.coupons), (it) => it.on),
    problems: union(own.problems, other.problems),
  };
}

/** Each thing as often as the one that has it more often. */
function union<T extends { on: string }>(own: readonly T[], other: readonly T[]): T[] {
  const text = (it: T) => JSON.stringify(Object.entries(it).sort(([a], [b]) => (a < b ? -1 : 1)));
  const left = Map.groupBy(own, text);
  const added = other.filter((it) => {
    const same = left.get(text(it));
    return !same?.length || same.pop() === undefined;
  });
  return inOrder([...own, ...added], (it) => it.on);
}

const byDay = <T extends { on: string }>(all: T[]): T[] =>
  inOrder(all, (it) => it.on + JSON.stringify(it));

const inOrder = <T>(all: readonly T[], key: (it: T) => string): T[] =>
  all.toSorted((a, b) => (key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0));
