/** On which steps fresh numbers lie, by size and unit: common practice of rules and dials, no source. */
import { describe, expect, it } from 'vitest';
import type { Typed } from '../../../lib/answer.ts';
import type { Calculation } from '../../../lib/calculation.ts';
import { freshLike } from '../../../lib/practice/fresh-like.ts';
import { readQuantity } from '../../../lib/text/quantity-text.ts';
import type { System, Unit } from '../../../lib/units.ts';

/** A calculation of one input that gives back what it gets. */
const echo = (unit: Unit, more: object = {}) =>
  ({
    kind: 'procedure',
    title: 'Echo',
    inputs: {
      size: {
        label: 'Size',
        symbol: 's',
        unit,
        limits: { why: 'any' },
        example: '1',
        obtain: '',
        ...more,
      },
    },
    outputs: { same: { label: 'The same', unit, signed: true } },
    compute: ({ size }: { size: number }) => ({ same: size, because: [] }),
  }) as unknown as Calculation;

function drawn(unit: Unit, text: string, system: System, more?: object): number[] {
  return Array.from({ length: 150 }, (_, seed) => {
    const fresh = freshLike(echo(unit, more), { size: text } as Typed, ['same'], seed, system);
    const reading = readQuantity(String(fresh?.typed.size), unit);
    if ('problem' in reading) throw new Error(`${fresh?.typed.size}: ${reading.problem}`);
    return reading.value;
  });
}
/** The largest step, out of a list, on which all values lie. */
const stepOf = (values: readonly number[], candidates: readonly number[]) =>
  candidates
    .toSorted((a, b) => b - a)
    .find((step) => values.every((one) => Math.abs(one / step - Math.round(one / step)) < 1e-6));

describe('freshLike', () => {
  it.each<[Unit, string, System, number]>([
    ['in', '1/10 in', 'us', 1 / 64],
    ['in', '0.12 in', 'us', 1 / 32],
    ['in', '15/64 in', 'us', 1 / 32],
    ['in', '1/4 in', 'us', 1 / 16],
    ['in', '1-15/16 in', 'us', 1 / 16],
    ['in', '2 in', 'us', 1 / 4],
    ['in', '5-3/4 in', 'us', 1 / 4],
    ['in', '6 in', 'us', 1 / 2],
    ['in', '40 in', 'us', 1 / 2],
    ['mm', '6 mm', 'metric', 0.5],
    ['mm', '9.5 mm', 'metric', 0.5],
    ['mm', '10 mm', 'metric', 1],
    ['mm', '49 mm', 'metric', 1],
    ['mm', '50 mm', 'metric', 5],
    ['mm', '195 mm', 'metric', 5],
    ['mm', '200 mm', 'metric', 10],
    ['A', '120 A', 'us', 5],
    ['V', '24 V', 'us', 0.5],
    ['V', '39 V', 'us', 0.5],
    ['V', '40 V', 'us', 2],
    ['V', '80 V', 'us', 2],
    ['s', '70 s', 'us', 5],
    ['min', '20 min', 'us', 1],
    ['h', '3 h', 'us', 0.25],
    ['percent', '60 percent', 'us', 5],
    ['degF', '225 degF', 'us', 25],
    ['degC', '150 degC', 'metric', 10],
    ['in/min', '6 in/min', 'us', 0.5],
    ['mm/min', '150 mm/min', 'metric', 10],
    // No step of a shop: one in the second figure.
    ['lb', '3 lb', 'us', 0.1],
    ['lb', '47 lb', 'us', 1],
    ['kJ/mm', '0.8 kJ/mm', 'metric', 0.01],
  ])('keeps %s near %s on the step for its size (%s)', (unit, text, system, step) => {
    const values = drawn(unit, text, system);
    const half = [1, 2, 3, 4, 5, 8, 10].map((times) => step * times);
    expect(stepOf(values, [step / 2, ...half])).toBeCloseTo(step, 9);
    const own = readQuantity(text, unit);
    const about = 'value' in own ? own.value : Number.NaN;
    // Three quarters to a third more, rounded to the step.
    expect(Math.min(...values)).toBeGreaterThanOrEqual(0.75 * about - step / 2 - 1e-9);
    expect(Math.max(...values)).toBeLessThanOrEqual(1.35 * about + step / 2 + 1e-9);
    expect(Math.min(...values)).toBeLessThan(0.85 * about + step);
    expect(Math.max(...values)).toBeGreaterThan(1.25 * about - step);
  });

  it('never rounds a small size away: one step is the least', () => {
    for (const value of drawn('in', '1/128 in', 'us')) expect(value).toBe(1 / 64);
  });

  it('counts in whole ones, one at least', () => {
    const counts = drawn('1', '4', 'us', { whole: true });
    expect(new Set(counts)).toEqual(new Set([3, 4, 5].filter((one) => counts.includes(one))));
    expect(counts).toContain(3);
    expect(counts).toContain(5);
    expect(counts.every((one) => Number.isInteger(one) && one >= 3 && one <= 5)).toBe(true);
  });

  it('leaves what stands as it is: an angle, a standard value, a core, a list, nothing', () => {
    const other = {
      label: 'Other',
      symbol: 'o',
      unit: 'in',
      limits: { why: 'any' },
      example: '1',
      obtain: '',
    };
    const base = echo('in');
    const withOther = (name: string, more: object) =>
      ({ ...base, inputs: { ...base.inputs, [name]: { ...other, ...more } } }) as Calculation;
    for (const [name, more, text] of [
      ['turn', { unit: 'deg' }, '60 deg'],
      ['share', { unit: '1', default: '0.8' }, '0.7'],
      ['coreDiameter', {}, '1/8 in'],
      ['diameter', {}, '1/8 in'],
    ] as const)
      for (let seed = 0; seed < 20; seed++) {
        const fresh = freshLike(
          withOther(name, more),
          { size: '1 in', [name]: text } as Typed,
          ['same'],
          seed,
          'us',
        );
        expect(fresh?.typed[name]).toBe(text);
        expect(fresh?.typed.size).not.toBe('1 in');
      }
    // A word that reads like a number is still a word.
    const choice = { label: 'Grade', choices: ['60', '70'], example: '70', obtain: '' };
    const graded = { ...base, inputs: { ...base.inputs, grade: choice } } as unknown as Calculation;
    for (let seed = 0; seed < 20; seed++)
      expect(
        freshLike(graded, { size: '1 in', grade: '70' }, ['same'], seed, 'us')?.typed.grade,
      ).toBe('70');
  });

  it('wants a result that is there and above none', () => {
    const base = echo('in');
    const below = { ...base, compute: () => ({ same: -1, because: [] }) } as unknown as Calculation;
    const none = { ...base, compute: () => ({ same: 0, because: [] }) } as unknown as Calculation;
    for (const one of [below, none])
      expect(freshLike(one, { size: '1 in' }, ['same'], 1, 'us')).toBeUndefined();
    expect(freshLike(base, { size: '1 in' }, ['same', 'other'], 1, 'us')).toBeUndefined();
    expect(freshLike(base, { size: '1 in' }, [], 1, 'us')?.found.results.same).toBeGreaterThan(0);
  });
});
