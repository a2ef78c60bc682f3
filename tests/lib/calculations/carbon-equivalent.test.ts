/** The five indices against the weights that each gives an element, written as a table of fractions. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import carbonEquivalent from '../../../lib/calculations/carbon-equivalent.ts';

const elements = [
  'carbon',
  'manganese',
  'silicon',
  'copper',
  'nickel',
  'chromium',
  'molybdenum',
  'vanadium',
  'niobium',
  'boron',
] as const;
type Steel = Record<(typeof elements)[number], number>;

/** Percent of an element that count as one percent of carbon; 0 where the index leaves it out. */
const counts: Record<string, number[]> = {
  //        C  Mn  Si  Cu  Ni  Cr  Mo  V  Nb  B
  ceIIW: [1, 6, 0, 15, 15, 5, 5, 5, 0, 0], // IIW 1967 (from memory)
  ceAWS: [1, 6, 6, 15, 15, 5, 5, 5, 0, 0], // AWS D1.1, annex on preheat (from memory)
  pcm: [1, 20, 30, 20, 60, 20, 15, 10, 0, 1 / 5], // Ito and Bessyo 1968 (from memory)
  cet: [1, 10, 0, 20, 40, 20, 10, 0, 0, 0], // EN 1011-2 C.3 (from memory)
};
/** Yurioka's alloys in CEN (from memory), which one factor weighs by the carbon. */
const alloys = [0, 6, 24, 15, 20, 5, 5, 5, 5, 1 / 5];
const sum = (steel: Steel, parts: number[]) =>
  elements.reduce((all, name, i) => all + (parts[i] ? steel[name] / (parts[i] as number) : 0), 0);

const steel = fc.record(
  Object.fromEntries(elements.map((name) => [name, fc.double({ min: 0, max: 1, noNaN: true })])),
) as fc.Arbitrary<Steel>;

describe('carbon-equivalent', () => {
  it('adds up each element by its weight in each index', () => {
    fc.assert(
      fc.property(steel, (of) => {
        const found = carbonEquivalent.compute(of) as Record<string, number>;
        for (const [index, parts] of Object.entries(counts))
          expect(found[index], index).toBeCloseTo(sum(of, parts), 12);
        // 0.75 + 0.25·tanh x, written by the exponential: between a half and the whole.
        const factor = 1 - 0.5 / (1 + Math.exp(40 * (of.carbon - 0.12)));
        expect(found.carbonFactor).toBeCloseTo(factor, 12);
        expect(found.cen).toBeCloseTo(of.carbon + factor * sum(of, alloys), 12);
      }),
    );
  });

  it('takes every element but carbon as 0 where it is left out, and says in how to get it', () => {
    const given = answer(carbonEquivalent, { carbon: '0.2' });
    expect(given).toMatchObject({
      ok: true,
      results: { ceIIW: 0.2, pcm: 0.2, cet: 0.2, cen: 0.2 },
    });
    expect(answer(carbonEquivalent, { manganese: '1' })).toMatchObject({
      problems: [{ field: 'carbon', text: 'Carbon is missing' }],
    });
    const { carbon, ...others } = carbonEquivalent.inputs;
    expect(carbon.obtain).toContain('highest figure that the steel’s specification allows');
    for (const { obtain } of Object.values(others)) expect(obtain).toContain('counts as 0');
  });

  it('says nothing of a steel that every index covers', () => {
    // 0.10 + 1.5/6 = 0.35 for CE, 0.10 for Pcm, within method B.
    const given = answer(carbonEquivalent, { carbon: '0.1', manganese: '1.5' });
    expect(given.ok && given.because).toEqual([]);
  });

  // EN 1011-2 C.2 (from memory): method A covers CE of 0.30 to 0.70, ends included.
  it('covers by method A just what lies from 0.30 to 0.70', () => {
    const said = (ceIIW: number) => {
      const of = {
        ...Object.fromEntries(elements.map((name) => [name, 0])),
        carbon: 0.1,
        manganese: 1,
      };
      const reasons = carbonEquivalent.notes?.(of as Steel, { ceIIW } as never) ?? [];
      return reasons.some(({ text }) => text.startsWith('Method A'));
    };
    expect([0.299, 0.3, 0.7, 0.701].map(said)).toEqual([true, false, false, true]);
  });
});
