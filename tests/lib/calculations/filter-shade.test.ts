import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import filterShade from '../../../lib/calculations/filter-shade.ts';

const diameters = fc.double({ min: 0.04, max: 0.4, noNaN: true });
const currents = fc.double({ min: 5, max: 550, noNaN: true });

/** 29 CFR 1910.133(a)(5) restated as a reader reads it: which rows can this electrode stand in? */
function leastByReading(parts: number, current: number): number {
  const rows = [
    { shade: 7, holds: parts < 3 || current < 60 },
    { shade: 8, holds: (parts >= 3 && parts <= 5) || (current >= 60 && current <= 160) },
    { shade: 10, holds: (parts >= 5 && parts <= 8) || (current >= 160 && current <= 250) },
    { shade: 11, holds: parts > 8 || (current >= 250 && current <= 550) },
  ];
  return rows.findLast(({ holds }) => holds)?.shade ?? 0;
}

describe('filter-shade', () => {
  it('takes the last row of the federal table that the size or the current stands in', () => {
    for (const parts of [2, 2.9, 3, 4, 5, 6, 8, 8.2, 10, 12])
      for (const current of [30, 59, 60, 125, 160, 161, 200, 250, 251, 400, 550])
        expect(
          filterShade.compute({ diameter: parts / 32, current }).minimumShade,
          `${parts}/32 in, ${current} A`,
        ).toBe(leastByReading(parts, current));
  });

  // 8 CCR 3382: 1/16 to 5/32 in shade 10, 3/16 to 1/4 in shade 12, 5/16 and 3/8 in shade 14.
  it.each([
    [2, 10],
    [5, 10],
    [5.1, 12],
    [6, 12],
    [8, 12],
    [8.4, 14],
    [10, 14],
    [12, 14],
    // The table ends at 3/8 in; what is thicker still gets no lighter shade.
    [12.8, 14],
  ])('starts by an electrode of %s/32 in at shade %s', (parts, shade) => {
    expect(filterShade.compute({ diameter: parts / 32, current: 50 }).startShade).toBe(shade);
  });

  // ANSI Z49.1, suggested shades (from memory): 60 to 160 A 10, to 250 A 12, to 550 A 14.
  it.each([
    [159, 10],
    [160, 12],
    [249, 12],
    [250, 14],
    [550, 14],
  ])('starts by %s A at shade %s', (current, shade) => {
    expect(filterShade.compute({ diameter: 1 / 16, current }).startShade).toBe(shade);
  });

  it('writes down what the size asks for, what the current asks for, and which rules', () => {
    const said = (parts: number, current: number) =>
      filterShade.compute({ diameter: parts / 32, current }).because.map(({ text }) => text);
    expect(said(4, 200)).toEqual([
      'Least shade: the electrode’s size asks for 8, the current for 10. The darker rules: 10.',
      'To start with: by the electrode’s size 10.',
      'To start with: by the current 12. The darker of the two is taken.',
      'Begin with 12. If you cannot see the weld pool, go one shade lighter at a time until you can, and never below 10.',
    ]);
    expect(said(2, 50)).toEqual([
      'Least shade: the electrode’s size asks for 7, the current for 7. They agree.',
      'To start with: by the electrode’s size 10.',
      'Begin with 10. If you cannot see the weld pool, go one shade lighter at a time until you can, and never below 7.',
    ]);
    // 4 mm is sold as 5/32 in, which two rows of the law name.
    const metric = filterShade.compute({ diameter: 4 / 25.4, current: 100 });
    expect(metric.minimumShade).toBe(10);
    expect(metric.because[0]?.text).toContain('Where two rows name the same limit');
  });

  it('says by which of the two it starts', () => {
    const by = (diameter: number, current: number) =>
      filterShade
        .compute({ diameter, current })
        .because.filter(({ text }) => text.startsWith('To start with: by the current'))
        .map(({ kind }) => kind);
    expect(by(1 / 16, 59)).toEqual([]);
    expect(by(1 / 16, 125)).toEqual(['passed']);
    expect(by(1 / 16, 200)).toEqual(['row']);
    expect(by(3 / 16, 200)).toEqual(['passed']);
  });

  it('never starts lighter than the law allows, and never below 10', () => {
    fc.assert(
      fc.property(diameters, currents, (diameter, current) => {
        const { startShade, minimumShade } = filterShade.compute({ diameter, current });
        return startShade >= minimumShade && startShade >= 10;
      }),
    );
  });

  it('gets no lighter with more current', () => {
    fc.assert(
      fc.property(diameters, currents, currents, (diameter, a, b) => {
        const weak = filterShade.compute({ diameter, current: Math.min(a, b) });
        const strong = filterShade.compute({ diameter, current: Math.max(a, b) });
        return strong.minimumShade >= weak.minimumShade && strong.startShade >= weak.startShade;
      }),
    );
  });
});
