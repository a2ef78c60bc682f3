import { describe, expect, it } from 'vitest';
import type { Coupon } from '../../../lib/files/learner-record.ts';
import { movesOn, readiness } from '../../../lib/record/readiness.ts';

const coupon = (on: string, result: Coupon['result'], exercise = 'fillet-2f'): Coupon => ({
  exercise,
  on,
  result,
  readings: [],
  grader: result === 'waiting' ? '' : 'TL',
  note: '',
});

describe('readiness', () => {
  it('counts the last run by day, whatever order the coupons stand in', () => {
    const coupons = [
      coupon('2026-03-09', 'passed'),
      coupon('2026-03-02', 'passed'),
      coupon('2026-03-10', 'passed'),
      coupon('2026-03-05', 'repeat'),
    ];
    expect(readiness(coupons, 'fillet-2f')).toMatchObject({ graded: 4, passed: 3, run: 2 });
  });

  it('leaves out what waits and what belongs to another exercise', () => {
    const coupons = [
      coupon('2026-03-02', 'passed'),
      coupon('2026-03-03', 'waiting'),
      coupon('2026-03-04', 'repeat', 'groove-1g'),
    ];
    expect(readiness(coupons, 'fillet-2f')).toMatchObject({ graded: 1, waiting: 1, run: 1 });
  });

  it('has no range and no run before anything is graded', () => {
    expect(readiness([coupon('2026-03-02', 'waiting')], 'fillet-2f')).toEqual({
      graded: 0,
      passed: 0,
      waiting: 1,
      run: 0,
      range: undefined,
    });
  });
});

it('gives the range of Wilson for what was passed of what was graded', () => {
  const days = ['2026-03-02', '2026-03-03', '2026-03-04', '2026-03-05'];
  const coupons = days.map((on, place) => coupon(on, place === 0 ? 'repeat' : 'passed'));
  // Three of four at 95 %: 0.301 to 0.954 (Wilson's score interval, worked by hand).
  const { range, run } = readiness(coupons, 'fillet-2f');
  expect(range?.low).toBeCloseTo(0.3006, 4);
  expect(range?.high).toBeCloseTo(0.9544, 4);
  expect([run, movesOn]).toEqual([3, 3]);
});
