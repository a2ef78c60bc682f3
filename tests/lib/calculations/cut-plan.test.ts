import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import cutPlan from '../../../lib/calculations/cut-plan.ts';

function plan(pieces: [length: string, count: string][], stockLength: string, trim = '0 in') {
  const found = answer(cutPlan, {
    pieces: pieces.map(([length, count]) => ({ length, count })),
    stockLength,
    kerf: '0 in',
    trim,
  });
  if (!found.ok) throw new Error(found.problems[0]?.text);
  return found.results as ReturnType<typeof cutPlan.compute>;
}

describe('cut-plan', () => {
  it('numbers the bars from one and tells what is left of each', () => {
    // Five pieces of 8 in from bars of 20 in: 2, 2 and 1.
    const { bars, plan: rows, waste, lowerBound, proven } = plan([['8 in', '5']], '20 in');
    expect(rows.map(({ bar }) => bar)).toEqual([1, 2, 3]);
    expect(rows.map(({ waste: left }) => left)).toEqual([4, 4, 12]);
    expect(rows.map(({ used }) => used)).toEqual([16, 16, 8]);
    expect(rows.map(({ pieces }) => pieces)).toEqual(['2 × {8 in}', '2 × {8 in}', '1 × {8 in}']);
    // The bound knows only that 40 in need two bars; no plan does with two.
    expect([bars, lowerBound, proven]).toEqual([3, 2, false]);
    // 20 of 60 in.
    expect(waste).toBeCloseTo(100 / 3, 9);
  });

  it('plans ten thousand pieces, and not one more', () => {
    const thousands = Array.from({ length: 10 }, (): [string, string] => ['1 in', '1000']);
    // 20 pieces to a bar of 20 in without a kerf.
    expect(plan(thousands, '20 in')).toMatchObject({ bars: 500, waste: 0, proven: true });
    expect(() => plan([...thousands, ['1 in', '1']], '20 in')).toThrow('up to 10000 pieces');
  });

  it('counts the trim as waste', () => {
    expect(plan([['8 in', '2']], '20 in', '2 in')).toMatchObject({
      bars: 1,
      waste: 20,
      proven: true,
    });
  });
});
