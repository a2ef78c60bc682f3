import { describe, expect, it } from 'vitest';
import type { Coupon } from '../../../lib/files/learner-record.ts';
import { readiness } from '../../../lib/record/readiness.ts';

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
