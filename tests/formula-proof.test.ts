/** The proof itself is put to the proof: each kind of slip in a formula is caught. */
import { describe, expect, it } from 'vitest';
import { defineFormula, type Formula } from '../lib/calculation.ts';
import { disagreements, unbalanced, undeclared } from './formula-proof.ts';

const limits = { min: 1, max: 5000, why: 'for this test' };
const asked = { label: 'Length', obtain: 'Measure it.', example: '7', limits } as const;

/** Friction in a pipe: one coefficient, one threshold, three units. */
const pipe = (text: string, compute: (speed: number, length: number) => number): Formula =>
  defineFormula({
    title: 'Two regimes',
    summary: 'A formula with a coefficient and a threshold.',
    inputs: {
      length: { ...asked, symbol: 'L', unit: 'in' },
      time: { ...asked, symbol: 't', unit: 's' },
    },
    outputs: { speed: { label: 'Speed', symbol: 'v', unit: 'in/min', formula: text } },
    cite: [{ source: 'geometry', known: 'derived' }],
    compute: ({ length, time }) => ({ speed: compute(length, time) }),
  }) as unknown as Formula;

const text = '0.7378 * 60 * length / time';
const stepped = 'time < 2300 ? length / time : 2 * length / time';

describe('the formula proof', () => {
  it('passes a formula that agrees', () => {
    const sound = pipe(text, (length, time) => (0.7378 * 60 * length) / time);
    expect(disagreements(sound)).toEqual([]);
    expect(undeclared(sound)).toEqual([]);
    expect(unbalanced(sound)).toEqual([]);
    expect(
      disagreements(pipe(stepped, (length, time) => (time < 2300 ? length : 2 * length) / time)),
    ).toEqual([]);
  });

  it('catches a coefficient that is off in the fourth digit', () => {
    const off = pipe(text, (length, time) => (0.7379 * 60 * length) / time);
    expect(disagreements(off)[0]).toContain('speed: shown');
  });

  it('catches a threshold that is off by 0.001', () => {
    const off = pipe(stepped, (length, time) => (time < 2300.001 ? length : 2 * length) / time);
    expect(disagreements(off)[0]).toContain('2300');
  });

  it('catches a threshold that is closed on the wrong side', () => {
    const off = pipe(stepped, (length, time) => (time <= 2300 ? length : 2 * length) / time);
    expect(disagreements(off)[0]).toContain('2300');
  });

  it('catches a dimension that does not balance', () => {
    expect(
      unbalanced(pipe('60 * length * time', (length, time) => 60 * length * time)),
    ).toHaveLength(1);
  });

  it('catches a misspelled name, even one that is a unit', () => {
    const compute = (length: number, time: number) => length / time;
    expect(undeclared(pipe('lenght / time', compute))).toEqual(['lenght']);
    expect(undeclared(pipe('length / s', compute))).toEqual(['s']);
  });
});
