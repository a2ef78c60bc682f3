/** Each wrong value that is foreseen, worked again by hand with the mistake in it. */
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import { loadCalculation } from '../../../lib/calculations.ts';
import type { Asked } from '../../../lib/practice/asked.ts';
import { misread } from '../../../lib/practice/misread.ts';
import { type Slip, slipsOf } from '../../../lib/practice/slips.ts';
import { slipsByFactor } from '../../../lib/practice/slips-by-factor.ts';
import type { Unit } from '../../../lib/units.ts';

async function ask(id: string, want: string, typed: Typed): Promise<Asked> {
  const calculation = await loadCalculation(id);
  const found = answer(calculation, typed);
  if (!found.ok) throw new Error(found.problems.map(({ text }) => text).join());
  return { calculation, typed, results: found.results, want, system: 'us' };
}
const right = ({ results, want }: Asked) => results[want] as number;
/** The one slip whose sentence has these words in it. */
function only(slips: readonly Slip[], words: string): number {
  const [one, ...more] = slips.filter(({ text }) => text.includes(words));
  if (!one || more.length > 0) throw new Error(`${words}: ${slips.map(({ text }) => text).join()}`);
  return one.value;
}
const degrees = Math.PI / 180;

describe('a value that was misread', () => {
  it('of a fillet leaves the throat of the other triangle (height of a right triangle)', async () => {
    const asked = await ask('fillet-throat', 'throat', { legA: '1/4 in', legB: '3/8 in' });
    const slips = misread(asked, right(asked), 'in');
    const height = (a: number, b: number) => (a * b) / Math.hypot(a, b);
    const [both, other] = [
      only(slips, 'takes “leg along the first plate” for'),
      only(slips, 'takes “leg along the second plate” for'),
    ];
    expect(both).toBeCloseTo(height(0.25, 0.25), 9);
    expect(other).toBeCloseTo(height(0.375, 0.375), 9);
    // Both legs may change places: that is no slip.
    expect(slips.some(({ text }) => text.includes('exchanges'))).toBe(false);
  });

  it('of a groove leaves its rectangle and two triangles of other sizes', async () => {
    const [t, g] = [0.375, 0.25];
    const area = (thick: number, opening: number, angle: number) =>
      opening * thick + thick ** 2 * Math.tan((angle / 2) * degrees);
    const asked = await ask('groove-area', 'area', {
      thickness: '3/8 in',
      rootOpening: '1/4 in',
      includedAngle: '45 deg',
    });
    expect(right(asked)).toBeCloseTo(area(t, g, 45), 9);
    const slips = misread(asked, right(asked), 'in2');
    expect(only(slips, 'leaves “root opening” out')).toBeCloseTo(area(t, 0, 45), 9);
    expect(only(slips, 'leaves “groove angle” out')).toBeCloseTo(area(t, g, 0), 9);
    expect(only(slips, 'half of “groove angle”')).toBeCloseTo(area(t, g, 22.5), 9);
    expect(only(slips, 'twice “groove angle”')).toBeCloseTo(area(t, g, 90), 9);
    expect(only(slips, 'exchanges')).toBeCloseTo(area(g, t, 45), 9);
  });

  it('of a share is its rest, or none of it', async () => {
    const asked = await ask('bead-overlap', 'pitch', {
      width: '3/8 in',
      height: '3/32 in',
      overlap: '40 percent',
    });
    const slips = misread(asked, right(asked), 'in');
    expect(only(slips, '60 % instead of 40 %')).toBeCloseTo(0.375 * 0.4, 9);
    expect(only(slips, '“bead overlap” out')).toBeCloseTo(0.375, 9);
    // (3/8)² over the answer: what a product gives where a quotient is due.
    expect(only(slips, 'from “bead width” the wrong way')).toBeCloseTo(0.375 ** 2 / 0.225, 9);
  });

  it('of a time in seconds is hundredths of a minute; a length in the other system is 25.4 times as much', async () => {
    const asked = await ask('travel-speed', 'travelSpeed', {
      beadLength: '7 in',
      arcTime: '80 s',
    });
    const slips = misread(asked, right(asked), 'in/min');
    expect(only(slips, '80 s taken as 0.8 min')).toBeCloseTo(7 / 0.8, 9);
    expect(only(slips, 'bead length” in mm')).toBeCloseTo((60 * 7) / 25.4 / 80, 9);
  });

  it('of an arc efficiency is left out, or is on the wrong side', async () => {
    const asked = await ask('heat-input', 'heatInput', {
      voltage: '22 V',
      current: '125 A',
      travelSpeed: '6 in/min',
    });
    // 60 · 22 · 125 / (1000 · 6) = 27.5, times 0.8 = 22.
    expect(right(asked)).toBeCloseTo(22, 9);
    const slips = misread(asked, 22, 'kJ/in');
    expect(only(slips, 'leaves the arc efficiency out')).toBeCloseTo(27.5, 9);
    expect(only(slips, 'multiplies by the arc efficiency')).toBeCloseTo(22 * 0.64, 9);
    expect(only(slips, 'divides by the arc efficiency')).toBeCloseTo(22 / 0.64, 9);
  });

  it('of a diameter is its radius, or twice it: a section goes with the square', async () => {
    const asked = await ask('run-out-heat', 'heatInput', {
      coreDiameter: '1/8 in',
      consumedLength: '12 in',
      runOut: '7-1/2 in',
    });
    const slips = misread(asked, right(asked), 'kJ/mm');
    expect(only(slips, 'That fits the radius') / right(asked)).toBeCloseTo(1 / 4, 9);
    expect(only(slips, 'which goes in, radius or diameter') / right(asked)).toBeCloseTo(4, 9);
  });
});

describe('another figure of the problem', () => {
  it('is an output or a given value of the same kind, in the unit of the answer', async () => {
    const asked = await ask('fillet-throat', 'throat', { legA: '8 mm', legB: '6 mm' });
    const { neighbors } = slipsOf(asked, right(asked), 'mm');
    // 6, 8, 10: the throat of this triangle is 4.8.
    expect(right(asked) * 25.4).toBeCloseTo(4.8, 9);
    expect(only(neighbors, 'That is “width of a flat face”')).toBeCloseTo(10, 9);
    expect(only(neighbors, 'That is “leg along the first plate”')).toBeCloseTo(8, 9);
    expect(only(neighbors, 'That is “leg along the second plate”')).toBeCloseTo(6, 9);
    expect(neighbors.some(({ text }) => /area|angle between/i.test(text))).toBe(false);
  });

  it('is the answer in every other unit of its kind, and in no other kind', async () => {
    const asked = await ask('travel-speed', 'travelSpeed', { beadLength: '6 in', arcTime: '60 s' });
    const { neighbors } = slipsOf(asked, 6, 'in/min');
    expect(only(neighbors, 'right in mm/min')).toBeCloseTo(6 * 25.4, 9);
    for (const { text } of neighbors) expect(text).not.toMatch(/right in (in\/min|s|mm),/);
  });

  it('is a rate upside down: what was divided by what', async () => {
    const asked = await ask('travel-speed', 'travelSpeed', { beadLength: '6 in', arcTime: '65 s' });
    const { others } = slipsOf(asked, right(asked), 'in/min');
    const quotients = others.filter(({ text }) => text.includes(' divided by '));
    expect(quotients.map(({ value }) => value).toSorted()).toEqual([6 / 65, 65 / 6].toSorted());
  });
});

describe('the factor that a mistake leaves', () => {
  const factors = (asked: Asked, unit: Unit) =>
    slipsByFactor(asked, 1, unit).map(({ value, text }) => [text, value] as const);
  const has = (list: readonly (readonly [string, number])[], words: string, value: number) =>
    list.some(([text, one]) => text.includes(words) && Math.abs(one / value - 1) < 1e-5);

  it('of lengths is 25.4, of areas its square, only where the unit has inches in it', async () => {
    const throat = factors(
      await ask('fillet-throat', 'throat', { legA: '1/4 in', legB: '1/4 in' }),
      'in',
    );
    expect(has(throat, '25.4 times too much', 25.4)).toBe(true);
    expect(has(throat, '25.4 times too little', 1 / 25.4)).toBe(true);
    expect(has(throat, 'root of two', Math.SQRT2)).toBe(true);
    expect(has(throat, 'root of two', Math.SQRT1_2)).toBe(true);
    expect(
      throat.some(([text]) => /square inches|pounds|kilo|minutes|radius|share/.test(text)),
    ).toBe(false);
    const area = factors(
      await ask('fillet-throat', 'area', { legA: '1/4 in', legB: '1/4 in' }),
      'in2',
    );
    expect(has(area, '645 times too much', 25.4 ** 2)).toBe(true);
    expect(has(area, '645 times too little', 25.4 ** -2)).toBe(true);
  });

  it('of everything is ten or two; of a time sixty, of a kilo a thousand, of a share a hundred', async () => {
    const heat = factors(
      await ask('heat-input', 'arcEnergy', {
        voltage: '22 V',
        current: '125 A',
        travelSpeed: '6 in/min',
      }),
      'kJ/in',
    );
    for (const [words, value] of [
      ['ten times too much', 10],
      ['ten times too little', 1 / 10],
      ['a thousand times too much', 1000],
      ['a thousand times too little', 1 / 1000],
      ['sixty times too much', 60],
      ['sixty times too little', 1 / 60],
      ['twice too much', 2],
      ['half of it', 1 / 2],
    ] as const)
      expect(has(heat, words, value), words).toBe(true);
    expect(heat.some(([text]) => /pounds|throat|radius|percentage/.test(text))).toBe(false);
    const pitch = factors(
      await ask('bead-overlap', 'pitch', {
        width: '3/8 in',
        height: '3/32 in',
        overlap: '40 percent',
      }),
      'in',
    );
    expect(has(pitch, 'a hundred times too much', 100)).toBe(true);
    expect(has(pitch, 'a hundred times too little', 1 / 100)).toBe(true);
    expect(pitch.some(([text]) => /kilo|sixty/.test(text))).toBe(false);
  });

  it('of a mass is 2.20462 pounds in a kilogram; of a diameter two and four', async () => {
    const mass = factors(
      await ask('deposit', 'mass', { area: '0.5 in2', length: '7 in', density: '0.2836 lb/in3' }),
      'lb',
    );
    expect(has(mass, '2.2 pounds', 2.20462)).toBe(true);
    expect(has(mass, '2.2 pounds', 1 / 2.20462)).toBe(true);
    const core = factors(
      await ask('run-out-heat', 'heatInput', {
        coreDiameter: '1/8 in',
        consumedLength: '12 in',
        runOut: '7-1/2 in',
      }),
      'kJ/mm',
    );
    for (const [words, value] of [
      ['a diameter for a radius', 2],
      ['a radius for a diameter', 1 / 2],
      ['diameter was squared', 4],
      ['radius was squared', 1 / 4],
    ] as const)
      expect(has(core, words, value), words).toBe(true);
  });
});
