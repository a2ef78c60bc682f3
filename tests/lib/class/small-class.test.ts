/** Four learners and one exercise: every figure of the plan is worked by hand beside it. */
import { describe, expect, it } from 'vitest';
import type { ClassExercise, CouponPiece } from '../../../lib/class/class-exercise.ts';
import { type MetalChoices, metalOf } from '../../../lib/class/metal.ts';
import { preparationOf } from '../../../lib/class/preparation.ts';
import { rodsOf } from '../../../lib/class/rods.ts';
import { supplyOf, type Term } from '../../../lib/class/term.ts';
import { attemptsOf, hoursOf, type Turn } from '../../../lib/class/turns.ts';
import { metalParts, metalSaved } from '../../../lib/class/where-metal-goes.ts';

const turn = (exercise: Partial<ClassExercise>, more: Partial<Turn> = {}): Turn => ({
  learners: 4,
  attempts: 2,
  minutes: 90,
  repeats: 0.5,
  ...more,
  exercise: {
    slug: 'x',
    title: 'X',
    lesson: 1,
    stage: 'middle',
    station: 'booth',
    minutes: 60,
    attempts: 1,
    coupon: [],
    rods: [],
    work: 'other',
    ...exercise,
  },
});
const stock = { length: 100, kerf: 0, trim: 0 };
const choices: MetalChoices = {
  bar: stock,
  pipe: stock,
  bothSides: true,
  ringLoss: 0.5,
  ringLeast: 3,
  facing: 0.25,
  spare: 0,
};
const plate: CouponPiece = { section: 'plate', perInch: 2, length: 8, count: 1 };
const ring: CouponPiece = { section: 'ring', pipe: true, perInch: 2, length: 4, count: 2 };

it('counts attempts in whole ones, repeats included, and hours as they are', () => {
  // 4 × 2 × 1.5 = 12 attempts; 5 × 1 × 1.5 = 7.5, which is 8.
  expect(attemptsOf(turn({}))).toBe(12);
  expect(attemptsOf(turn({}, { learners: 5, attempts: 1 }))).toBe(8);
  // 12 × 90 min = 18 h; 7.5 × 90 min = 11.25 h.
  expect(hoursOf(turn({}))).toBe(18);
  expect(hoursOf(turn({}, { learners: 5, attempts: 1 }))).toBe(11.25);
});

describe('preparation', () => {
  const work = { grooveMinutes: 30, pipeMinutes: 60, otherHours: 5 };
  const of = (turns: Turn[], waiting = 0) => preparationOf(turns, work, choices, waiting);

  it('bevels every groove coupon that comes without a bevel', () => {
    const here = turn({ work: 'groove', coupon: [{ ...plate, bevel: 'here' }] });
    expect(of([here])).toMatchObject({ grooves: 12, joints: 0, hours: 6 });
    const bought = turn({ work: 'groove', coupon: [{ ...plate, bevel: 'bought' }] });
    expect(of([bought])).toMatchObject({ grooves: 0, hours: 0 });
  });

  it('bevels a bought ring again each time it serves again', () => {
    // 4 in, 3 in at least, half an inch lost: three uses. 12 joints from 4 pairs, 8 beveled again.
    const bought = turn({ work: 'pipe', coupon: [{ ...ring, bevel: 'bought' }] });
    expect(of([bought])).toMatchObject({ joints: 8, hours: 8, grooves: 0 });
    const here = turn({ work: 'pipe', coupon: [{ ...ring, bevel: 'here' }] });
    expect(of([here])).toMatchObject({ joints: 12, hours: 12 });
  });

  it('wears a grinding disc in two ground joints or six tees, a flap disc in eight of either', () => {
    const groove = turn({ work: 'groove' });
    const pipe = turn({ work: 'pipe' });
    const tee = turn({ work: 'tee' });
    expect(of([groove])).toMatchObject({ grindingDiscs: 6, flapDiscs: 2 });
    expect(of([pipe])).toMatchObject({ grindingDiscs: 6, flapDiscs: 2 });
    expect(of([tee])).toMatchObject({ grindingDiscs: 2, flapDiscs: 2 });
    expect(of([groove, pipe, tee])).toMatchObject({ grindingDiscs: 14, flapDiscs: 5 });
    const { grindingDiscs, flapDiscs } = of([turn({})]);
    expect(Math.abs(grindingDiscs) + Math.abs(flapDiscs)).toBe(0);
  });

  it('has the hours without a booth, less those of side stations, and those of others', () => {
    const side = turn({ station: 'side' });
    expect(of([side], 40)).toMatchObject({ sideHours: 18, capacity: 27 });
    expect(of([side], 10)).toMatchObject({ sideHours: 18, capacity: 5 });
    expect(of([turn({})], 10)).toMatchObject({ sideHours: 0, capacity: 15 });
  });
});

describe('where the metal goes', () => {
  const parts = (piece: CouponPiece, change: Partial<MetalChoices> = {}) => {
    const with_ = { ...choices, ...change };
    const turns = [turn({ coupon: [piece] })];
    return metalParts(turns, metalOf(turns, with_), with_);
  };

  it('weighs bars, coupons and ends', () => {
    // 12 pieces of 8 in: 96 in of a bar of 100 in, at 2 lb an inch.
    expect(parts(plate)).toEqual({
      bought: 200,
      coupons: 192,
      sparePieces: 0,
      facing: 0,
      cuts: 0,
      trim: 0,
      rest: 8,
    });
  });

  it('tells the trim and the cuts apart', () => {
    // 11 cuts of 1/4 in lie between 12 pieces; the twelfth takes the end off.
    const found = parts(plate, { bar: { length: 100, kerf: 0.25, trim: 0.5 } });
    expect(found).toMatchObject({ bought: 200, trim: 1, cuts: 6 });
    expect(found.rest).toBeCloseTo(1, 9);
    // No room for the last cut, nor a need for it: the bar ends with the piece.
    const full = parts(plate, { bar: { length: 98.75, kerf: 0.25, trim: 0 } });
    expect(full).toMatchObject({ cuts: 5.5, rest: 0 });
  });

  it('rounds spare pieces up to whole ones', () => {
    // 12 pieces and a tenth: 14. Two bars of 12.
    expect(parts(plate, { spare: 0.1 })).toMatchObject({
      bought: 400,
      coupons: 192,
      sparePieces: 32,
    });
  });

  it('adds the facing to each ring', () => {
    // 4 pairs serve three times: 8 rings of 4-1/4 in.
    expect(parts(ring)).toMatchObject({ coupons: 64, facing: 4, rest: 132 });
  });

  it('leaves out a section whose piece is longer than a bar', () => {
    expect(parts({ ...plate, length: 101 })).toMatchObject({ bought: 0, coupons: 0, rest: 0 });
  });

  it('tells what using a coupon again saves', () => {
    const saved = (exercise: Partial<ClassExercise>, change: Partial<MetalChoices> = {}) =>
      metalSaved([turn(exercise)], { ...choices, ...change });
    // Six plates of 16 lb are spared.
    expect(saved({ coupon: [{ ...plate, twoSided: true }] })).toEqual({
      sides: 96,
      rings: 0,
      passes: 0,
    });
    expect(saved({ coupon: [{ ...plate, twoSided: true }] }, { bothSides: false }).sides).toBe(0);
    // Eight of twelve pairs of rings, 16 lb a pair.
    expect(saved({ coupon: [ring] })).toEqual({ sides: 0, rings: 128, passes: 0 });
    // Three passes in one tee, and not a tee for each: 2 × 12 tees of 16 lb.
    expect(saved({ coupon: [plate], passes: 3 })).toEqual({ sides: 0, rings: 0, passes: 384 });
  });
});

describe('electrodes', () => {
  const spare = { early: 0.5, middle: 0.25, late: 0 };
  const lot = { kind: 'E7018 {1/8 in}', each: 0.07, count: 5 };

  it('are burned by all attempts, with the spare of their stage, in cans of ten pounds', () => {
    // 60 burned, 75 with the spare, 5.25 lb.
    expect(rodsOf([turn({ rods: [lot] })], spare)).toEqual([
      { kind: lot.kind, burned: 60, pieces: 75, pounds: 75 * 0.07, cans: 1 },
    ]);
    expect(rodsOf([turn({ rods: [lot], stage: 'early' })], spare)[0]).toMatchObject({ pieces: 90 });
    // 60 × 1/6 lb are just ten pounds.
    const heavy = { ...lot, each: 1 / 6 };
    expect(rodsOf([turn({ rods: [heavy], stage: 'late' })], spare)[0]).toMatchObject({ cans: 1 });
    expect(rodsOf([turn({ rods: [heavy] })], spare)[0]).toMatchObject({ cans: 2 });
  });

  it('of one kind are added up, and a kind that nobody burns is left out', () => {
    const other = { ...lot, kind: 'E6010 {1/8 in}', count: 0 };
    const found = rodsOf(
      [turn({ rods: [lot, other] }), turn({ rods: [lot], stage: 'late' })],
      spare,
    );
    expect(found).toMatchObject([{ kind: lot.kind, burned: 120, pieces: 135 }]);
  });
});

describe('the hours of a term', () => {
  const term: Term = {
    learners: 16,
    booths: 14,
    evenings: 5,
    perWeek: 2,
    start: 18.5,
    end: 22,
    lockUp: 22.5,
    setUp: 0.25,
    clearing: 0.5,
    watch: 1,
  };

  it('run from the first arc to the last, in as many booths as there are learners for', () => {
    expect(supplyOf(term)).toMatchObject({
      firstArc: 18.75,
      lastArc: 21.5,
      arcHours: 2.75,
      lostToWatch: 0,
      weeks: [2, 2, 1],
      byWeek: [77, 77, 38.5],
      boothHours: 192.5,
      waiting: 27.5,
    });
    expect(supplyOf({ ...term, learners: 10 })).toMatchObject({
      boothHours: 137.5,
      each: 13.75,
      waiting: 0,
    });
  });

  it('end early enough for the fire watch', () => {
    expect(supplyOf({ ...term, lockUp: 22 })).toMatchObject({ lastArc: 21, lostToWatch: 0.5 });
  });

  it('are none where the watch would have to begin before the first arc', () => {
    const none = supplyOf({ ...term, lockUp: 19 });
    expect(none).toMatchObject({ arcHours: 0, boothHours: 0, lostToWatch: 2.75 });
  });
});
