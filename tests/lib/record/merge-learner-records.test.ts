import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readFile, writeFile } from '../../../lib/files/file-kind.ts';
import {
  type Coupon,
  emptyRecord,
  type LearnerRecord,
  learnerRecord,
} from '../../../lib/files/learner-record.ts';
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

const waiting: Coupon = {
  exercise: 'fillet-2f',
  on: '2026-02-03',
  result: 'waiting',
  readings: [{ item: 'leg', reading: '5/16 in' }],
  grader: '',
  note: '',
};
const graded: Coupon = {
  ...waiting,
  result: 'repeat',
  readings: [{ item: 'undercut', reading: '3/64 in' }],
  grader: 'TL',
  note: 'Missed: undercut',
  missed: ['undercut'],
};
const withCoupons = (...coupons: Coupon[]): LearnerRecord => ({ ...emptyRecord(), coupons });

describe('a graded coupon', () => {
  it('takes the place of the one that waited, and keeps the readings of both', () => {
    const { coupons } = mergeLearnerRecords(withCoupons(waiting), withCoupons(graded));
    expect(coupons).toEqual([{ ...graded, readings: [...graded.readings, ...waiting.readings] }]);
  });

  it('leaves a second coupon of that day waiting', () => {
    const { coupons } = mergeLearnerRecords(
      withCoupons(waiting, { ...waiting, readings: [] }),
      withCoupons(graded),
    );
    expect(coupons.map(({ result }) => result).sort()).toEqual(['repeat', 'waiting']);
  });

  it('keeps the order of a day, which tells the last result', () => {
    const day = ['repeat', 'passed'].map((result) => ({ ...graded, result }) as Coupon);
    const both = mergeLearnerRecords(withCoupons(...day), withCoupons(...day.toReversed()));
    expect(both.coupons.map(({ result }) => result)).toEqual(['repeat', 'passed']);
  });

  it('takes no place of another day, another exercise or another grade', () => {
    for (const other of [
      { ...waiting, on: '2026-02-04' },
      { ...waiting, exercise: 'groove-3g' },
      { ...graded, result: 'passed' as const, missed: [] },
    ])
      expect(mergeLearnerRecords(withCoupons(other), withCoupons(graded)).coupons).toHaveLength(2);
  });
});

describe('two records in one', () => {
  it('lose nothing: every graded coupon, every reading and every problem stands', () => {
    fc.assert(
      fc.property(record, record, (one, two) => {
        const both = mergeLearnerRecords(one, two);
        for (const from of [one, two]) {
          for (const it of from.problems)
            expect(times(both.problems, it)).toBe(
              Math.max(times(one.problems, it), times(two.problems, it)),
            );
          for (const it of from.coupons) {
            const day = (all: Coupon[]) =>
              all.filter(({ exercise, on }) => exercise === it.exercise && on === it.on);
            const graded = (all: Coupon[]) =>
              day(all).filter(({ result, grader }) => result === it.result && grader === it.grader);
            expect(day(both.coupons).length).toBeGreaterThanOrEqual(day(from.coupons).length);
            if (it.result !== 'waiting')
              expect(graded(both.coupons).length).toBeGreaterThanOrEqual(
                graded(from.coupons).length,
              );
            const held = day(both.coupons).some(({ readings }) =>
              it.readings.every((one) =>
                readings.some(({ item, reading }) => item === one.item && reading === one.reading),
              ),
            );
            expect(held).toBe(true);
          }
        }
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

  it('make no difference in which order they come', () => {
    fc.assert(
      fc.property(record, record, (one, two) => {
        const { learner: _, ...ab } = mergeLearnerRecords(one, two);
        const { learner: __, ...ba } = mergeLearnerRecords(two, one);
        const sorted = (all: readonly unknown[]) => all.map((it) => JSON.stringify(it)).sort();
        expect(sorted(ab.coupons)).toEqual(sorted(ba.coupons));
        expect(ab.lessonsRead).toEqual(ba.lessonsRead);
        expect(ab.selfChecks).toEqual(ba.selfChecks);
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
