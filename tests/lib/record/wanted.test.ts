import { describe, expect, it } from 'vitest';
import type { Coupon } from '../../../lib/files/learner-record.ts';
import { wanted } from '../../../lib/record/wanted.ts';

const asks = {
  id: 'fillet-2f',
  points: ['size', 'undercut'],
  holdPoints: ['After fit-up, square and gap are checked.'],
};
const coupon = (on: string, result: Coupon['result'], missed?: string[]): Coupon => ({
  exercise: 'fillet-2f',
  on,
  result,
  readings: [],
  grader: result === 'waiting' ? '' : 'TL',
  note: '',
  ...(missed && { missed }),
});

describe('what is still wanted', () => {
  it('is, before the first coupon, what the exercise is looked at for and where to stop', () => {
    expect(wanted([], asks)).toEqual([
      'Looked at: size, undercut.',
      'Stop and show it: after fit-up, square and gap are checked.',
    ]);
  });

  it('names the points that the last coupon missed, and only those', () => {
    const said = wanted(
      [coupon('2026-03-02', 'repeat', ['size']), coupon('2026-03-05', 'repeat', ['undercut'])],
      asks,
    );
    expect(said[0]).toBe('Not met in the coupon of 2026-03-05: undercut.');
    expect(said.join(' ')).toContain('3 more passes in a row');
  });

  it('asks the grader where no point was written down', () => {
    expect(wanted([coupon('2026-03-02', 'repeat')], asks)[0]).toContain('Ask TL what to change');
  });

  it('counts the passes that are left in a row, and starts again after a repeat', () => {
    const days = ['2026-03-02', '2026-03-03', '2026-03-04', '2026-03-05'];
    const passes = (count: number) => days.slice(0, count).map((on) => coupon(on, 'passed'));
    expect(wanted(passes(2), asks)).toEqual([
      '1 more pass in a row, where your shop asks for 3 (common practice).',
    ]);
    expect(wanted(passes(3), asks)).toEqual([]);
    expect(wanted([...passes(3), coupon('2026-03-06', 'repeat')], asks).join(' ')).toContain(
      '3 more passes',
    );
  });

  it('tells what waits, and looks at no other exercise', () => {
    const other = { ...coupon('2026-03-09', 'repeat', ['size']), exercise: 'groove-1g' };
    expect(wanted([coupon('2026-03-02', 'waiting'), other], asks)[0]).toBe(
      'One coupon waits for its grade.',
    );
  });
});

describe('what is said of the coupons', () => {
  const bare = { ...asks, points: [], holdPoints: [] };

  it('is of the last one that was graded, by its day', () => {
    const coupons = [
      coupon('2026-03-09', 'repeat', ['undercut', 'undercut', 'size']),
      coupon('2026-03-02', 'passed'),
      coupon('2026-03-12', 'waiting'),
    ];
    expect(wanted(coupons, bare)).toEqual([
      'Not met in the coupon of 2026-03-09: undercut, size.',
      'One coupon waits for its grade.',
      '3 more passes in a row, where your shop asks for 3 (common practice).',
    ]);
    expect(wanted(coupons.toReversed(), bare)[0]).toContain('2026-03-09');
  });

  it('counts those that wait, and names who graded, or nobody', () => {
    const waits = ['2026-03-02', '2026-03-03'].map((on) => coupon(on, 'waiting'));
    expect(wanted(waits, bare)).toEqual(['2 coupons wait for their grade.']);
    const unsigned = { ...coupon('2026-03-02', 'repeat'), grader: '' };
    expect(wanted([unsigned], bare)[0]).toBe(
      'The coupon of 2026-03-02 is to be repeated. Ask who graded it what to change.',
    );
  });

  it('goes down with each pass in a row, to nothing at three', () => {
    const passes = (many: number) =>
      Array.from({ length: many }, (_, day) => coupon(`2026-03-0${day + 1}`, 'passed'));
    const more = (many: number) => wanted(passes(many), asks);
    expect(more(1)).toEqual([
      '2 more passes in a row, where your shop asks for 3 (common practice).',
    ]);
    expect(more(2)).toEqual([
      '1 more pass in a row, where your shop asks for 3 (common practice).',
    ]);
    expect(more(3)).toEqual([]);
    expect(more(4)).toEqual([]);
    expect(wanted([], bare)).toEqual([]);
  });
});
