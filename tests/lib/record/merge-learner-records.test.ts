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

describe('one day at the booth in two records', () => {
  const reading = (item: string, text: string) => ({ item, reading: text });
  const leg = reading('leg', '5/16 in');
  const cut = reading('undercut', '3/64 in');
  const merge = (own: Coupon[], other: Coupon[]) =>
    mergeLearnerRecords(withCoupons(...own), withCoupons(...other)).coupons;
  const turned = (coupon: Coupon) =>
    Object.fromEntries(Object.entries(coupon).reverse()) as unknown as Coupon;

  it('is the same in whatever order its fields stand', () => {
    expect(merge([graded], [turned(graded)])).toEqual([graded]);
    expect(merge([waiting, graded], [turned(graded), turned(waiting)])).toHaveLength(2);
  });

  it('gives a grade to the waiting coupon that it holds before one that it does not', () => {
    const other = { ...waiting, readings: [leg] };
    const held = { ...waiting, readings: [cut] };
    const grade = { ...graded, readings: [cut] };
    expect(merge([other, held], [grade])).toEqual([other, grade]);
    expect(merge([grade], [other, held])).toEqual([grade, other]);
  });

  it('pairs what is equal before anything else', () => {
    expect(merge([waiting], [graded, waiting])).toEqual([waiting, graded]);
    const more = { ...graded, readings: [...graded.readings, leg] };
    expect(merge([graded], [more, graded])).toEqual([graded, more]);
  });

  it('picks the same waiting coupon for a grade from either side', () => {
    const small = { ...waiting, readings: [reading('leg', '1/4 in')] };
    const both = (coupons: Coupon[]) => coupons.map((it) => JSON.stringify(it)).sort();
    for (const some of [
      [waiting, small],
      [small, waiting],
    ]) {
      const left = merge(some, [graded]);
      expect(both(left)).toEqual(both(merge([graded], some.toReversed())));
      expect(left.map(({ result }) => result).sort()).toEqual(['repeat', 'waiting']);
    }
  });

  it('adds each reading once, by item and figure together', () => {
    const two = { ...waiting, readings: [cut, reading('undercut', '1/32 in'), leg] };
    const [one, ...none] = merge(
      [two],
      [{ ...graded, readings: [cut, reading('size', '5/16 in')] }],
    );
    expect(none).toEqual([]);
    expect(one?.readings).toEqual([
      cut,
      reading('size', '5/16 in'),
      reading('undercut', '1/32 in'),
      leg,
    ]);
  });

  it('keeps both notes, each once, in two thousand letters', () => {
    const note = (own: string, grade: string) =>
      merge([{ ...waiting, note: own }], [{ ...graded, note: grade }])[0]?.note;
    expect(note('Too fast', 'Missed: undercut')).toBe('Missed: undercut / Too fast');
    expect(note('', 'Missed: undercut')).toBe('Missed: undercut');
    expect(note('Too fast', '')).toBe('Too fast');
    expect(note('undercut', 'Missed: undercut')).toBe('Missed: undercut');
    expect(note('a'.repeat(1500), 'b'.repeat(1500))).toBe(
      `${'b'.repeat(1500)} / ${'a'.repeat(497)}`,
    );
  });

  it('takes of two grades alike the one that holds the other, and joins no others', () => {
    const more = { ...graded, readings: [...graded.readings, leg], note: 'Missed: undercut, size' };
    expect(merge([graded], [more])).toEqual([more]);
    expect(merge([more], [graded])).toEqual([more]);
    const other = { ...graded, readings: [leg] };
    expect(merge([graded], [other])).toEqual([graded, other]);
    expect(merge([graded], [{ ...more, grader: 'RB' }])).toHaveLength(2);
    const empty = { ...waiting, readings: [] };
    expect(merge([waiting], [empty])).toEqual([waiting, empty]);
  });
});

describe('problems and coupons of two records', () => {
  const problem = { calculation: 'deposit', set: 1, place: 0, solved: true, on: '2026-03-02' };
  const merge = (own: LearnerRecord['problems'], other: LearnerRecord['problems']) =>
    mergeLearnerRecords({ ...emptyRecord(), problems: own }, { ...emptyRecord(), problems: other })
      .problems;

  it('stand by their days, those of one day as they stood', () => {
    const [early, late] = [
      { ...problem, on: '2026-03-01' },
      { ...problem, on: '2026-03-05' },
    ];
    const [one, two, three] = [1, 2, 3].map((place) => ({ ...problem, place }));
    if (!one || !two || !three) throw new Error();
    expect(merge([late, two, one], [three, early])).toEqual([early, two, one, three, late]);
    const coupon = (on: string) => ({ ...waiting, on });
    expect(
      mergeLearnerRecords(
        withCoupons(coupon('2026-03-05')),
        withCoupons(coupon('2026-03-01')),
      ).coupons.map(({ on }) => on),
    ).toEqual(['2026-03-01', '2026-03-05']);
  });

  it('stand as often as in the record that has them oftener, however their fields stand', () => {
    const turned = Object.fromEntries(
      Object.entries(problem).reverse(),
    ) as unknown as typeof problem;
    expect(merge([problem], [turned])).toEqual([problem]);
    expect(merge([problem], [turned, problem])).toHaveLength(2);
    expect(merge([problem, problem, problem], [problem])).toHaveLength(3);
    expect(merge([], [problem, problem])).toHaveLength(2);
  });

  it('keep the learner’s own number, or take the other where there is none', () => {
    const named = (learner: string) => ({ ...emptyRecord(), learner });
    expect(mergeLearnerRecords(named('7'), named('8')).learner).toBe('7');
    expect(mergeLearnerRecords(named(''), named('8')).learner).toBe('8');
  });
});
