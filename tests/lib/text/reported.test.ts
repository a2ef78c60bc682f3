import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import type { Calculation, Output } from '../../../lib/calculation.ts';
import cutPlan from '../../../lib/calculations/cut-plan.ts';
import { reported, reportedAt } from '../../../lib/text/reported.ts';

const leg: Output = { label: 'Leg', unit: 'in' };
const printed: Output = { label: 'Minimum', printed: { us: 'degF', metric: 'degC' } };

describe('reported', () => {
  it('gives the declared unit, a wished one, or that of a system', () => {
    expect(reported(leg, 0.25)).toEqual({ value: 0.25, unit: 'in' });
    expect(reported(leg, 0.25, { unit: 'mm' })).toEqual({ value: 6.35, unit: 'mm' });
    expect(reported(leg, 0.25, { system: 'metric' })).toEqual({ value: 6.35, unit: 'mm' });
  });
  it('refuses a unit of another kind', () => {
    expect(() => reported(leg, 0.25, { unit: 'kg' })).toThrow(TypeError);
    expect(() => reported(undefined, 1)).toThrow(TypeError);
  });
  it('takes a printed figure from its own system and does not convert it', () => {
    const preheat = { us: 50, metric: 10 };
    expect(reported(printed, preheat)).toEqual({ value: 50, unit: 'degF' });
    expect(reported(printed, preheat, { system: 'metric' })).toEqual({ value: 10, unit: 'degC' });
    expect(reported(printed, { us: 150, metric: 65 }, { unit: 'degC' })).toEqual({
      value: 65,
      unit: 'degC',
    });
  });
  it('passes words, yes and no, shapes and nothing', () => {
    expect(reported({ label: 'Way', words: ['up'] }, 'up')).toEqual({ value: 'up' });
    expect(reported({ label: 'Fits', yes: true }, false)).toEqual({ value: false });
    expect(reported({ label: 'Map', shape: true }, { a: 1 })).toEqual({ value: { a: 1 } });
    expect(reported(leg, undefined)).toEqual({ value: null });
  });
  it('speaks a text with quantities in the system that is wished', () => {
    const text: Output = { label: 'Why', text: true };
    const said = (system: 'us' | 'metric') =>
      String(reported(text, 'a {1 in} gap', { system }).value).replaceAll('\u00a0', ' ');
    expect([said('us'), said('metric')]).toEqual(['a 1 in gap', 'a 25.4 mm gap']);
  });
});

describe('reportedAt', () => {
  // Three pieces of 8 in with two cuts between fit a bar of 24-1/2 in, not one of 24 in.
  const found = answer(cutPlan as Calculation, {
    pieces: [{ length: '8 in', count: '3' }],
    stockLength: '24-1/2 in',
    kerf: '1/16 in',
    trim: '0 in',
  });
  if (!found.ok) throw new Error('no plan');
  it('finds a cell of a list by its path', () => {
    expect(reportedAt(cutPlan as Calculation, found.results, 'bars').value).toBe(1);
    expect(reportedAt(cutPlan as Calculation, found.results, 'plan.0.used')).toMatchObject({
      value: 24,
      unit: 'in',
    });
  });
});
