/** Exercises fill the weeks in their order; a week of its own is kept, full or not. */
import { describe, expect, it } from 'vitest';
import type { ClassExercise } from '../../../lib/class/class-exercise.ts';
import type { Turn } from '../../../lib/class/turns.ts';
import { weekNeeds } from '../../../lib/class/week-needs.ts';
import { weeksOf } from '../../../lib/class/weeks.ts';

const turn = (slug: string, hours: number, more: Partial<Turn> & { side?: true } = {}): Turn => {
  const { side, ...rest } = more;
  const exercise: ClassExercise = {
    slug,
    title: slug,
    lesson: 1,
    stage: 'early',
    station: side ? 'side' : 'booth',
    minutes: 60,
    attempts: 1,
    coupon: [],
    rods: [],
    work: 'other',
  };
  return { exercise, learners: 1, attempts: 1, minutes: 60 * hours, repeats: 0, ...rest };
};
const laid = (turns: Turn[], byWeek: number[]) =>
  weeksOf(turns, byWeek).map(({ number, shares, demand }) => [
    number,
    demand,
    shares.map((it) => `${it.turn.exercise.slug} ${it.share}`).join(', '),
  ]);

describe('weeksOf', () => {
  it('fills one week after the other, an exercise cut where a week is full', () => {
    expect(laid([turn('a', 3), turn('b', 2)], [4, 4])).toEqual([
      [1, 4, 'a 1, b 0.5'],
      [2, 1, 'b 0.5'],
    ]);
  });

  it('puts into week 0 what no week has room for', () => {
    expect(laid([turn('a', 8)], [2, 4])).toEqual([
      [1, 2, 'a 0.25'],
      [2, 4, 'a 0.5'],
      [0, 2, 'a 0.25'],
    ]);
    expect(laid([turn('a', 1)], [])).toEqual([[0, 1, 'a 1']]);
  });

  it('keeps an exercise in the week that was set, and lets the others take what room is left', () => {
    expect(laid([turn('a', 3), turn('b', 3, { week: 1 })], [4, 4])).toEqual([
      [1, 4, `a ${1 / 3}, b 1`],
      [2, 2, `a ${2 / 3}`],
    ]);
    expect(laid([turn('a', 1), turn('b', 9, { week: 2 })], [4, 4])).toEqual([
      [1, 1, 'a 1'],
      [2, 9, 'b 1'],
    ]);
  });

  it('passes a week over that is full already', () => {
    expect(laid([turn('a', 1), turn('b', 4, { week: 1 })], [4, 4])).toEqual([
      [1, 4, 'b 1'],
      [2, 1, 'a 1'],
    ]);
  });

  it('lets an exercise follow the others when its week lies past the term', () => {
    expect(laid([turn('a', 1, { week: 9 })], [4])).toEqual([[1, 1, 'a 1']]);
  });

  it('puts what needs no booth beside what the booths do by then, without hours', () => {
    expect(laid([turn('a', 3), turn('saw', 2, { side: true }), turn('b', 2)], [4, 4])).toEqual([
      [1, 4, 'a 1, saw 1, b 0.5'],
      [2, 1, 'b 0.5'],
    ]);
    // The term is full: the saw stands in its last week, not outside it.
    expect(laid([turn('a', 4), turn('b', 4), turn('saw', 2, { side: true })], [4, 4])).toEqual([
      [1, 4, 'a 1'],
      [2, 4, 'b 1, saw 1'],
    ]);
    expect(laid([turn('saw', 2, { side: true })], [])).toEqual([[0, 0, 'saw 1']]);
  });
});

describe('weekNeeds', () => {
  const stock = { length: 240, kerf: 0, trim: 0 };
  const metal = {
    bar: stock,
    pipe: stock,
    bothSides: false,
    ringLoss: 0,
    ringLeast: 0,
    facing: 0.25,
    spare: 0,
  };
  const spare = { early: 0.5, middle: 0, late: 0 };
  const needsOf = (turns: Turn[], byWeek: number[]) =>
    weekNeeds(weeksOf(turns, byWeek), metal, spare);
  const welded = (slug: string, piece: { section: string; pipe?: true }) => {
    const it = turn(slug, 1, { attempts: 4 });
    it.exercise.coupon = [{ perInch: 1, length: 8, count: 1, ...piece }];
    it.exercise.rods = [{ kind: 'E7018', each: 0.07, count: 3 }];
    return it;
  };

  it('has the metal of what is begun ready, and electrodes with their spare as they are burned', () => {
    // Four attempts of an hour: three in the first week, one in the second. 3 × 4 × 1.5 = 18 electrodes.
    const [one, two] = needsOf([welded('a', { section: 'bar' })], [3, 3]);
    expect(one?.attempts.map(({ count }) => count)).toEqual([3]);
    expect(one?.pieces).toEqual([{ section: 'bar', length: 8, count: 3 }]);
    expect(one?.rods).toEqual([{ kind: 'E7018', count: 14 }]);
    expect(two?.pieces).toEqual([{ section: 'bar', length: 8, count: 1 }]);
    expect(two?.rods).toEqual([{ kind: 'E7018', count: 4 }]);
  });

  it('asks for nothing in a week whose part was ready in the week before', () => {
    const one = turn('a', 4);
    one.exercise.coupon = [{ section: 'bar', perInch: 1, length: 8, count: 1 }];
    one.exercise.rods = [{ kind: 'E7018', each: 0.07, count: 1 }];
    // One attempt of four hours over two weeks: its metal lies ready in the first, 1.5 electrodes in both.
    expect(needsOf([one], [3, 3]).map(({ attempts, ...rest }) => [attempts.length, rest])).toEqual([
      [
        1,
        { pieces: [{ section: 'bar', length: 8, count: 1 }], rods: [{ kind: 'E7018', count: 2 }] },
      ],
      [0, { pieces: [], rods: [] }],
    ]);
  });

  it('keeps one section of two lengths, and one length of two sections, apart', () => {
    const of = (section: string, length: number) => {
      const it = turn(`${section} ${length}`, 1);
      it.exercise.coupon = [{ section, perInch: 1, length, count: 1 }];
      return it;
    };
    const turns = [of('bar', 8), of('bar', 6), of('plate', 8), of('bar', 8)];
    expect(needsOf(turns, [9])[0]?.pieces).toEqual([
      { section: 'bar', length: 8, count: 2 },
      { section: 'bar', length: 6, count: 1 },
      { section: 'plate', length: 8, count: 1 },
    ]);
  });

  it('adds alike pieces up and keeps others apart, a ring with its facing', () => {
    const turns = [
      welded('a', { section: 'bar' }),
      welded('b', { section: 'bar' }),
      welded('c', { section: 'pipe', pipe: true }),
    ];
    const [one] = needsOf(turns, [12]);
    expect(one?.pieces).toEqual([
      { section: 'bar', length: 8, count: 8 },
      { section: 'pipe', length: 8.25, count: 4 },
    ]);
  });
});
