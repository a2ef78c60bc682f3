/**
 * Which problems to take up again today. The rule: what was read comes back after one day; each day
 * on which it was solved moves it to the next longer gap, a miss puts it back to one day. Gaps that
 * grow with success are common practice of learning by repetition; the numbers are ours, no source.
 */
import { addDays, daysBetween } from '../calendar.ts';
import type { LearnerRecord } from '../files/learner-record.ts';

/** Days until it comes back, after none, one, two … days solved in a row. */
export const gaps = [1, 3, 7, 14, 30, 60] as const;
/** A round is short: a few minutes before the hood goes down. */
export const mostInRound = 6;

export interface LessonProblems {
  id: string;
  calculations: readonly string[];
}

export interface Due {
  lesson: string;
  calculation: string;
  /** The day it came up, `2026-03-02`. */
  on: string;
}

/** What can be taken up today, longest overdue first. Each calculation belongs to the first lesson read. */
export function dueOn(
  today: string,
  lessons: readonly LessonProblems[],
  record: Pick<LearnerRecord, 'lessonsRead' | 'problems'>,
): Due[] {
  const due = new Map<string, Due>();
  for (const { id: lesson, calculations } of lessons) {
    const read = record.lessonsRead.find((it) => it.lesson === lesson)?.on;
    if (read === undefined) continue;
    for (const calculation of calculations)
      if (!due.has(calculation))
        due.set(calculation, { lesson, calculation, on: comesUp(calculation, read, record) });
  }
  return [...due.values()].filter(({ on }) => on <= today).sort((a, b) => a.on.localeCompare(b.on));
}

/** Today's round: the longest overdue, with neighbors from different lessons where that can be. */
export function roundOn(
  today: string,
  lessons: readonly LessonProblems[],
  record: Pick<LearnerRecord, 'lessonsRead' | 'problems'>,
): Due[] {
  const left = dueOn(today, lessons, record).slice(0, mostInRound);
  const round: Due[] = [];
  while (left.length > 0) {
    const counts = Map.groupBy(left, ({ lesson }) => lesson);
    const others = left.filter(({ lesson }) => lesson !== round.at(-1)?.lesson);
    // The lesson with most left goes first, or its problems would be left together at the end.
    const [next] = (others.length > 0 ? others : left).toSorted(
      (a, b) => (counts.get(b.lesson)?.length ?? 0) - (counts.get(a.lesson)?.length ?? 0),
    ) as [Due];
    left.splice(left.indexOf(next), 1);
    round.push(next);
  }
  return round;
}

/** The number of a day's set, so that each day brings other numbers. */
export const setOfDay = (today: string): number => 1 + (daysBetween('2000-01-01', today) % 99999);

function comesUp(calculation: string, read: string, { problems }: Pick<LearnerRecord, 'problems'>) {
  const days = Map.groupBy(
    problems.filter((it) => it.calculation === calculation),
    ({ on }) => on,
  );
  let last = read;
  let level = 0;
  for (const [on, tries] of [...days].sort(([a], [b]) => a.localeCompare(b))) {
    if (on > last) last = on;
    level = tries.every(({ solved }) => solved) ? level + 1 : 0;
  }
  return addDays(last, gaps[Math.min(level, gaps.length - 1)] as number);
}
