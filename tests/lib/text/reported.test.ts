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
  it('refuses an output that does not exist even where there is no result', () => {
    expect(() => reported(undefined, undefined)).toThrow('there is no such output');
  });
  it('reports a word of a measured output as a word', () => {
    const open: Output = { label: 'Up to', unit: 'in', words: ['unlimited'] };
    expect(reported(open, 'unlimited')).toEqual({ value: 'unlimited' });
    expect(reported({ label: 'Why', text: true }, 'none')).toEqual({ value: 'none' });
  });
  it('converts a printed figure only into a unit that was asked for and is not its own', () => {
    const thick: Output = { label: 'Wall', printed: { us: 'in', metric: 'mm' } };
    const wall = { us: 0.432, metric: 10.97 };
    expect(reported(thick, wall, { unit: 'in' })).toEqual({ value: 0.432, unit: 'in' });
    expect(reported(thick, wall, { unit: 'ft' })).toMatchObject({
      value: expect.closeTo(0.036, 12),
      unit: 'ft',
    });
    expect(reported(thick, wall, { unit: 'm' })).toMatchObject({ value: 0.01097, unit: 'm' });
    expect(() => reported(thick, wall, { unit: 'A' })).toThrow(TypeError);
  });
  it('reports rows cell by cell: numbers with units, texts spoken, gaps as nothing', () => {
    const list: Output = {
      label: 'Rows',
      list: { gap: { label: 'Gap', unit: 'in' }, why: { label: 'Why', text: true } },
    };
    const rows = [
      { gap: 1, why: 'a {1 in} gap' },
      { gap: undefined, why: undefined },
    ];
    const of = (system: 'us' | 'metric') => reported(list, rows, { system }).value;
    expect(of('metric')).toEqual([
      { gap: { value: 25.4, unit: 'mm' }, why: { value: 'a 25.4\u00a0mm gap' } },
      { gap: { value: null }, why: { value: null } },
    ]);
    expect(reported(list, rows).value).toEqual([
      { gap: { value: 1, unit: 'in' }, why: { value: 'a 1\u00a0in gap' } },
      { gap: { value: null }, why: { value: null } },
    ]);
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
  it('gives a cell in a wished unit, and nothing where there is no such row', () => {
    const at = (path: string, wish?: object) =>
      reportedAt(cutPlan as Calculation, found.results, path, wish);
    // 24 in are two feet.
    expect(at('plan.0.used', { unit: 'ft' })).toEqual({ value: 2, unit: 'ft' });
    expect(at('plan.0.pieces')).toEqual({ value: '3 × 8\u00a0in' });
    expect(at('plan.0.pieces', { unit: 'ft' })).toEqual({ value: '3 × 8\u00a0in' });
    expect(at('plan.7.used')).toEqual({ value: null });
    expect(at('plan.0.nothing')).toEqual({ value: null });
    expect(at('plan.length')).toEqual({ value: 1 });
    expect(at('waste')).toMatchObject({ unit: 'percent' });
  });
  it('finds a cell of a list by its path', () => {
    expect(reportedAt(cutPlan as Calculation, found.results, 'bars').value).toBe(1);
    expect(reportedAt(cutPlan as Calculation, found.results, 'plan.0.used')).toMatchObject({
      value: 24,
      unit: 'in',
    });
  });
});
