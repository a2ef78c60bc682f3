import { describe, expect, it } from 'vitest';
import { emptyRecord, type LearnerRecord } from '../../../lib/files/learner-record.ts';
import {
  withLessonRead,
  withoutLessonRead,
  withProblem,
  withTicks,
} from '../../../lib/record/record-changes.ts';

const record: LearnerRecord = {
  ...emptyRecord(),
  learner: '7',
  lessonsRead: [{ lesson: 'arc-length', on: '2026-03-02' }],
  selfChecks: [{ exercise: 'flat-bead', ticked: [0], on: '2026-03-02' }],
};

describe('a record', () => {
  it('keeps the first day on which a lesson was read', () => {
    expect(withLessonRead(record, 'arc-length', '2026-03-09')).toEqual(record);
    expect(withLessonRead(record, 'slag', '2026-03-09').lessonsRead).toEqual([
      { lesson: 'arc-length', on: '2026-03-02' },
      { lesson: 'slag', on: '2026-03-09' },
    ]);
  });

  it('takes a lesson off again, and no other', () => {
    const two = withLessonRead(record, 'slag', '2026-03-09');
    expect(withoutLessonRead(two, 'slag')).toEqual(record);
    expect(withoutLessonRead(record, 'slag')).toEqual(record);
  });

  it('holds the latest ticks of an exercise, and none when all are taken away', () => {
    const ticked = withTicks(record, 'flat-bead', [1, 2], '2026-03-09');
    expect(ticked.selfChecks).toEqual([
      { exercise: 'flat-bead', ticked: [1, 2], on: '2026-03-09' },
    ]);
    const other = withTicks(record, 'fillet-2f', [0], '2026-03-09');
    expect(other.selfChecks).toHaveLength(2);
    expect(withTicks(other, 'fillet-2f', [], '2026-03-10').selfChecks).toEqual(record.selfChecks);
  });

  it('adds a problem at its end', () => {
    const problem = { calculation: 'deposit', set: 1, place: 0, solved: true, on: '2026-03-02' };
    const again = { ...problem, place: 1 };
    expect(withProblem(withProblem(record, problem), again).problems).toEqual([problem, again]);
  });

  it('is never changed in place', () => {
    const before = structuredClone(record);
    withLessonRead(record, 'slag', '2026-03-09');
    withoutLessonRead(record, 'arc-length');
    withTicks(record, 'flat-bead', [], '2026-03-09');
    expect(record).toEqual(before);
  });
});

it('a lesson that was read stays as it is among others', () => {
  const two = withLessonRead(record, 'slag', '2026-03-09');
  expect(withLessonRead(two, 'arc-length', '2026-04-01')).toEqual(two);
  expect(withLessonRead(two, 'slag', '2026-04-01')).toEqual(two);
});
