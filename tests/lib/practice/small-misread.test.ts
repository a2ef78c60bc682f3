/** Slips of a product of a length, a share and a number, each worked by hand. */
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import { type Calculation, defineFormula } from '../../../lib/calculation.ts';
import { misread } from '../../../lib/practice/misread.ts';
import { slipsByFactor } from '../../../lib/practice/slips-by-factor.ts';

const input = (label: string, unit: 'in' | '1' | 'percent') =>
  ({ label, obtain: '', symbol: 'x', unit, limits: { why: '' }, example: '1' }) as const;
const product = defineFormula({
  title: '',
  summary: '',
  cite: [],
  inputs: {
    length: input('Length', 'in'),
    share: input('Share', '1'),
    count: input('Number', '1'),
    waste: { ...input('Waste', 'percent'), optional: true },
    kind: {
      label: 'Kind',
      obtain: '',
      choices: ['flat', 'round'],
      example: 'flat',
      default: 'flat',
    },
  },
  outputs: { out: { label: 'Sum', unit: 'in', formula: 'length * share * count' } },
  compute: ({ length, share, count, waste = 0 }) => ({
    out: length * share * count * (1 - waste / 100),
  }),
}) as unknown as Calculation;

function slips(typed: Typed, calculation = product) {
  const found = answer(calculation, typed);
  if (!found.ok) throw new Error(JSON.stringify(found));
  const computed = found.results.out as number;
  const asked = { calculation, typed, results: found.results, want: 'out', system: 'us' } as const;
  return Object.fromEntries(misread(asked, computed, 'in').map(({ text, value }) => [text, value]));
}
const near = (all: Record<string, number>) =>
  Object.fromEntries(Object.entries(all).map(([text, value]) => [text, expect.closeTo(value, 9)]));

describe('what was misread in a product of 2 in, 0.7 and 3, which is 4.2 in', () => {
  const typed = { length: '2 in', share: '0.7', count: '3' };
  it('is each of these and nothing else', () => {
    expect(slips(typed)).toEqual(
      near({
        'That fits “length” in mm, and it is given in in.': 4.2 / 25.4,
        'That leaves “length” out.': 0,
        'That leaves “share” out.': 6,
        'That takes the rest of “share”: 0.3 instead of 0.7.': 1.8,
        'That multiplies by “share” where the rule divides.': 4.2 * 0.49,
        'That divides by “share” where the rule multiplies.': 4.2 / 0.49,
        'That goes from “length” the wrong way: multiplied where the rule divides, or the other way round.':
          4 / 4.2,
        'That takes “share” for “number” too.': 0.98,
        'That takes “number” for “share” too.': 18,
      }),
    );
  });

  it('is nothing of a share that is none, or that stands twice', () => {
    for (const share of ['1', '3', '1.5']) {
      const texts = Object.keys(slips({ ...typed, share }));
      expect(texts.filter((text) => /leaves “share”|rest of|by “share”/.test(text))).toEqual([]);
    }
    expect(
      Object.keys(slips({ ...typed, share: '3' })).filter((text) => /too\.$/.test(text)),
    ).toEqual([]);
  });

  it('goes the wrong way only in a formula', () => {
    const procedure = { ...product, kind: 'procedure' } as unknown as Calculation;
    expect(Object.keys(slips(typed, procedure)).some((text) => text.includes('wrong way'))).toBe(
      false,
    );
  });

  it('is of a percentage its rest, or none of it, without last bits', () => {
    const found = slips({ ...typed, waste: '29.7 percent' });
    expect(found['That takes the rest of “waste”: 70.3 % instead of 29.7 %.']).toBeCloseTo(
      4.2 * 0.297,
      9,
    );
    expect(found['That leaves “waste” out.']).toBeCloseTo(4.2, 9);
  });
});

it('a factor is foreseen only where the problem has what it mixes up', () => {
  const asked = {
    calculation: product,
    typed: {},
    results: {},
    want: 'out',
    system: 'us',
  } as const;
  const factors = slipsByFactor(asked, 1, 'in').map(({ value }) => Number(value.toPrecision(6)));
  // Inches for millimeters, the decimal point, a percentage, both sides: no time, mass, radius or throat.
  expect(factors).toEqual([25.4, 0.0393701, 10, 0.1, 100, 0.01, 2, 0.5]);
});
