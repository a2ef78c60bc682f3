/**
 * AWS D1.1 Table 3.2 (2010), 3.3 (2015), 5.8 (2020), row by row in both systems, up to each thickness
 * and just over it. Read, but the metric figures of category C, which are from memory.
 */
import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import preheatMinimum from '../../../lib/calculations/preheat-minimum.ts';
import { categories, citeRow, preheatSteels } from '../../../lib/tables/preheat-d1.1.ts';

const byCategory = {
  A: { steel: 'A36', electrodeKind: 'not low-hydrogen' },
  B: { steel: 'A36', electrodeKind: 'low-hydrogen' },
  C: { steel: 'A572 Grade 60', electrodeKind: 'low-hydrogen' },
} as const;

/** Thickness, then °F and °C of categories A, B and C. */
const printed: [thickness: string, a: string, b: string, c: string][] = [
  ['1/8 in', '32 0', '32 0', '50 10'],
  ['3/4 in', '32 0', '32 0', '50 10'],
  ['3 mm', '32 0', '32 0', '50 10'],
  ['20 mm', '32 0', '32 0', '50 10'],
  ['0.7501 in', '150 65', '50 10', '150 65'],
  ['1-1/2 in', '150 65', '50 10', '150 65'],
  ['20.1 mm', '150 65', '50 10', '150 65'],
  ['38 mm', '150 65', '50 10', '150 65'],
  ['1.5001 in', '225 110', '150 65', '225 110'],
  ['2-1/2 in', '225 110', '150 65', '225 110'],
  ['38.1 mm', '225 110', '150 65', '225 110'],
  ['65 mm', '225 110', '150 65', '225 110'],
  ['2.5001 in', '300 150', '225 110', '300 150'],
  ['65.1 mm', '300 150', '225 110', '300 150'],
  ['12 in', '300 150', '225 110', '300 150'],
];

describe('the preheat table', () => {
  it.each(printed)('at %s says %s in category A, %s in B, %s in C', (thickness, ...figures) => {
    for (const [index, category] of categories.entries()) {
      const found = answer(preheatMinimum, { ...byCategory[category], thickness });
      if (!found.ok) throw new Error(found.problems[0]?.text);
      const { us, metric } = found.results.minimumTemperature as { us: number; metric: number };
      expect(found.results.category).toBe(category);
      expect(`${us} ${metric}`).toBe(figures[index]);
    }
  });

  it('puts the older carbon steels in A or B by the electrode, the stronger in B, the strongest in C', () => {
    const of = (low: string, other?: string) =>
      Object.entries(preheatSteels)
        .filter(([, by]) => by['low-hydrogen'] === low && by['not low-hydrogen'] === other)
        .map(([steel]) => steel.replace('Grade ', '').replace('Class ', ''))
        .sort()
        .join(', ');
    expect(of('B', 'A')).toBe(
      'A106 B, A131 A, A131 B, A131 CS, A131 D, A131 DS, A131 E, A36, A500 A, A500 B, A500 C, A501, A516 55, A516 60, A516 65, A516 70, A53 B, A709 36',
    );
    expect(of('B')).toBe(
      'A537 1, A537 2, A572 42, A572 50, A572 55, A588, A618 II, A618 III, A618 Ib, A633 A, A633 B, A633 C, A633 D, A709 50, A709 50W, A913 50, A992',
    );
    expect(of('C')).toBe(
      'A572 60, A572 65, A633 E, A709 70W, A852, A913 60, A913 65, API 2W 60, API 2Y 60, API 5L X52',
    );
  });

  it('is read but for the metric figures of category C', () => {
    expect(categories.map((category) => citeRow(category).known)).toEqual([
      'read',
      'read',
      'memory',
    ]);
    for (const category of categories) expect(citeRow(category).at).toContain('2015 Table 3.3');
  });
});
