import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readFile, writeFile } from '../../../lib/files/file-kind.ts';
import { type LearnerRecord, learnerRecord } from '../../../lib/files/learner-record.ts';
import { mergeLearnerRecords } from '../../../lib/record/merge-learner-records.ts';

const on = fc.integer({ min: 1, max: 28 }).map((day) => `2026-02-${String(day).padStart(2, '0')}`);
const slug = fc.constantFrom('flat-bead', 'fillet-2f', 'groove-3g');
const few = <T>(one: fc.Arbitrary<T>) => fc.array(one, { maxLength: 6 });
const record: fc.Arbitrary<LearnerRecord> = fc.record({
  learner: fc.constantFrom('', '7', '12'),
  lessonsRead: few(fc.record({ lesson: slug, on })),
  selfChecks: few(fc.record({ exercise: slug, ticked: few(fc.nat({ max: 5 })), on })),
  coupons: few(
    fc.record({
      exercise: slug,
      on,
      result: fc.constantFrom('waiting' as const, 'passed' as const, 'repeat' as const),
      readings: fc.array(
        fc.record({ item: fc.constant('leg'), reading: fc.constantFrom('1/4 in', '5/16 in') }),
        { maxLength: 1 },
      ),
      grader: fc.constantFrom('', 'TL'),
      note: fc.constantFrom('', 'undercut'),
    }),
  ),
  problems: few(
    fc.record({ calculation: slug, set: fc.nat(3), place: fc.nat(3), solved: fc.boolean(), on }),
  ),
});

const times = (all: readonly unknown[], one: unknown) => {
  const text = (it: unknown) =>
    JSON.stringify(it, Object.keys({ ...(it as object), item: 0, reading: 0 }).sort());
  return all.filter((it) => text(it) === text(one)).length;
};

describe('two records in one', () => {
  it('lose nothing: every coupon and problem stands as often as in either', () => {
    fc.assert(
      fc.property(record, record, (one, two) => {
        const both = mergeLearnerRecords(one, two);
        for (const from of [one, two])
          for (const list of ['coupons', 'problems'] as const)
            for (const it of from[list])
              expect(times(both[list], it)).toBe(
                Math.max(times(one[list], it), times(two[list], it)),
              );
      }),
    );
  });

  it('lose no lesson and no tick, and keep the day of the first reading', () => {
    fc.assert(
      fc.property(record, record, (one, two) => {
        const both = mergeLearnerRecords(one, two);
        for (const { lesson, on } of [...one.lessonsRead, ...two.lessonsRead]) {
          const found = both.lessonsRead.filter((it) => it.lesson === lesson);
          expect(found).toHaveLength(1);
          expect((found[0]?.on ?? '') <= on).toBe(true);
        }
        for (const { exercise, ticked } of [...one.selfChecks, ...two.selfChecks])
          expect(both.selfChecks.find((it) => it.exercise === exercise)?.ticked).toEqual(
            expect.arrayContaining(ticked),
          );
      }),
    );
  });

  it('change nothing when the same file is opened again', () => {
    fc.assert(
      fc.property(record, record, (one, two) => {
        const both = mergeLearnerRecords(one, two);
        expect(mergeLearnerRecords(both, two)).toEqual(both);
        expect(mergeLearnerRecords(both, one)).toEqual(both);
      }),
    );
  });

  it('come back from a file as they were', () => {
    fc.assert(
      fc.property(record, record, (one, two) => {
        const both = mergeLearnerRecords(one, two);
        const read = readFile(learnerRecord, writeFile(learnerRecord, both, '2026-03-01'));
        expect(read).toMatchObject({ ok: true, data: both });
      }),
    );
  });
});
