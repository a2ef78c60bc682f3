import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import startingCurrent from '../../../lib/calculations/starting-current.ts';
import { fillAndFillet, openRoot, typical } from '../../../lib/tables/starting-currents.ts';

const ask = (given: Record<string, string>) =>
  answer(startingCurrent, { position: 'flat', classification: 'E7018', ...given });

describe('starting-current', () => {
  it('lists every row with the first setting between its ends', () => {
    const rows = [
      ...Object.values(fillAndFillet).flatMap((sizes) =>
        Object.values(sizes).flatMap((positions) => Object.values(positions)),
      ),
      ...Object.values(openRoot),
    ];
    expect(rows.length).toBeGreaterThan(10);
    for (const { low, suggested, high } of rows) {
      expect(suggested).toBeGreaterThan(low);
      expect(suggested).toBeLessThan(high);
    }
  });

  it('never starts vertical hotter than flat, and asks for more from a thicker electrode', () => {
    for (const sizes of Object.values(fillAndFillet)) {
      let before = 0;
      for (const { flat, vertical } of Object.values(sizes)) {
        expect(vertical.suggested).toBeLessThan(flat.suggested);
        expect(flat.suggested).toBeGreaterThan(before);
        before = flat.suggested;
      }
    }
  });

  // AWS A5.1, annex, typical amperage ranges (from memory).
  it.each([
    ['E7018', 3, 70, 100],
    ['E7018', 4, 115, 165],
    ['E7018', 5, 150, 220],
    ['E7018', 6, 200, 275],
    ['E6010', 3, 40, 80],
    ['E6010', 4, 75, 125],
    ['E6010', 5, 110, 170],
    ['E6010', 6, 140, 215],
    ['E6013', 3, 45, 90],
    ['E6013', 4, 80, 130],
    ['E6013', 5, 105, 180],
    ['E6013', 6, 150, 230],
    ['E7014', 3, 80, 125],
    ['E7014', 4, 110, 160],
    ['E7014', 5, 150, 210],
    ['E7014', 6, 200, 275],
    ['E7016', 3, 65, 110],
    ['E7016', 4, 100, 150],
    ['E7016', 5, 140, 200],
    ['E7016', 6, 180, 255],
  ] as const)(
    'knows the range of %s in %s/32 in as printed: %s to %s A',
    (name, size, low, high) => {
      expect(typical[name][size]).toEqual({ low, high });
    },
  );

  // The shop's own card (common practice, no source): lowest, first, highest, in amperes.
  it.each([
    ['E7018', '3/32 in', '75 85 100', '70 80 90', '75 85 95'],
    ['E7018', '1/8 in', '115 125 140', '105 115 125', '110 120 130'],
    ['E7018', '5/32 in', '150 165 190', '130 140 155', '140 150 165'],
    ['E6010', '3/32 in', '45 60 75', '45 55 65', '50 60 70'],
    ['E6010', '1/8 in', '80 95 115', '75 85 100', '80 90 105'],
    ['E6011', '1/8 in', '80 95 115', '75 85 100', '80 90 105'],
  ])(
    'sets %s of %s as the shop does: %s flat and horizontal, %s vertical, %s overhead',
    (classification, diameter, flat, vertical, overhead) => {
      for (const [position, card] of Object.entries({
        flat,
        horizontal: flat,
        vertical,
        overhead,
      })) {
        const found = ask({ classification, diameter, position });
        if (!found.ok) throw new Error(found.problems[0]?.text);
        const { low, suggested, high } = found.results;
        expect(`${low} ${suggested} ${high}`, position).toBe(card);
      }
    },
  );

  it.each([
    ['3/32 in', '50 60 70'],
    ['1/8 in', '65 78 90'],
  ])('sets E6010 of %s into an open root as the shop does: %s', (diameter, card) => {
    const found = ask({ classification: 'E6010', diameter, use: 'open root' });
    if (!found.ok) throw new Error(found.problems[0]?.text);
    const { low, suggested, high } = found.results;
    expect(`${low} ${suggested} ${high}`).toBe(card);
  });

  it('begins low in the typical range where the shop has no row: a fifth up it, out of position at its end', () => {
    const first = (given: Record<string, string>) => {
      const found = ask(given);
      if (!found.ok) throw new Error(found.problems[0]?.text);
      return [found.results.low, found.results.suggested, found.results.high];
    };
    // 200 A to 275 A: a fifth of 75 A is 15 A. 110 A to 170 A: a fifth of 60 A is 12 A.
    expect(first({ diameter: '3/16 in' })).toEqual([200, 215, 275]);
    expect(first({ diameter: '3/16 in', position: 'horizontal' })).toEqual([200, 215, 275]);
    const cellulose = { classification: 'E6010', diameter: '5/32 in' };
    expect(first(cellulose)).toEqual([110, 122, 170]);
    for (const position of ['vertical', 'overhead'])
      expect(first({ ...cellulose, position })).toEqual([110, 110, 170]);
  });

  it('has nothing to go by for a size that neither the shop nor the standard names', () => {
    const sizes: Record<string, string>[] = [
      { diameter: '7/32 in' },
      { classification: 'E6010', diameter: '5/32 in', use: 'open root' },
    ];
    for (const given of sizes) {
      const answered = ask(given);
      expect(answered.ok || answered.problems[0]).toMatchObject({
        field: 'diameter',
        text: expect.stringMatching(/no row for it: take the range on the box/),
      });
    }
  });

  it.each(['E7018', 'E7016', 'E7014', 'E7018-1', 'E7018M'])(
    'lets %s over 5/32 in lie flat and level, and neither climb nor hang (AWS D1.1 Table 5.1)',
    (classification) => {
      const at = (position: string, diameter = '3/16 in') =>
        ask({ classification, diameter, position }).ok;
      expect([at('flat'), at('horizontal'), at('vertical'), at('overhead')]).toEqual([
        true,
        true,
        false,
        false,
      ]);
      expect(at('vertical', '5/32 in') && at('overhead', '5/32 in')).toBe(true);
    },
  );

  it.each(['E6010', 'E6011', 'E6013'])('lets %s of 3/16 in climb and hang', (classification) => {
    for (const position of ['vertical', 'overhead'])
      expect(ask({ classification, diameter: '3/16 in', position }).ok).toBe(true);
  });

  it('opens a root with cellulose only', () => {
    for (const classification of ['E7018', 'E7016', 'E7014', 'E6013', 'E7018-1', 'E7018M']) {
      const answered = ask({ classification, diameter: '1/8 in', use: 'open root' });
      expect(answered.ok || answered.problems[0]?.field).toBe('use');
    }
    expect(ask({ classification: 'E6011', diameter: '1/8 in', use: 'open root' }).ok).toBe(true);
  });

  it('goes lower into an open root than on a plate, uphill in every position alike', () => {
    for (const diameter of ['3/32 in', '1/8 in']) {
      const at = (use: string, position: string) => {
        const found = ask({ classification: 'E6010', diameter, position, use });
        if (!found.ok) throw new Error(found.problems[0]?.text);
        return found.results as { low: number; suggested: number; high: number };
      };
      const root = at('open root', 'vertical');
      expect(root).toEqual(at('open root', 'overhead'));
      expect(root.suggested).toBeLessThanOrEqual(at('fill and fillet', 'flat').suggested);
      expect(root.high).toBeLessThanOrEqual(at('fill and fillet', 'flat').high);
    }
  });

  it('stays flat within what AWS A5.1 calls typical', () => {
    for (const electrode of ['E7018', 'E6010'] as const)
      for (const [size, { flat }] of Object.entries(fillAndFillet[electrode])) {
        const usual = typical[electrode][Number(size)];
        expect(flat.suggested).toBeGreaterThanOrEqual(usual?.low ?? 0);
        expect(flat.suggested).toBeLessThanOrEqual(usual?.high ?? 0);
      }
  });

  it.each([
    ['2.5 mm', '3/32 in'],
    ['3.2 mm', '1/8 in'],
    ['3.25 mm', '1/8 in'],
    ['3.15 mm', '1/8 in'],
    ['4.0 mm', '5/32 in'],
    ['0.125', '1/8 in'],
  ])('takes a box marked %s for %s', (written, trade) => {
    const [a, b] = [ask({ diameter: written }), ask({ diameter: trade })];
    expect(a.ok && a.results).toEqual(b.ok && b.results);
    expect(a.ok).toBe(true);
  });

  it.each([
    ['E7018', '3/16 in', 'flat', 200, 215, 275],
    ['E7018', '4.8 mm', 'horizontal', 200, 215, 275],
    ['E6010', '5/32 in', 'flat', 110, 122, 170],
    ['E6010', '5/32 in', 'vertical', 110, 110, 170],
    ['E6011', '3/16 in', 'overhead', 140, 140, 215],
    ['E6013', '1/8 in', 'flat', 80, 90, 130],
    ['E7016', '5/32 in', 'vertical', 140, 140, 200],
  ])(
    'takes %s of %s, %s, from the typical range, low in it',
    (classification, diameter, position, low, suggested, high) => {
      const answered = ask({ classification, diameter, position });
      expect(answered).toMatchObject({ ok: true, results: { low, suggested, high } });
      if (answered.ok)
        expect(answered.because[0]).toMatchObject({
          text: expect.stringContaining('no row of its own'),
          cite: { source: 'aws-a5.1', known: 'memory' },
        });
    },
  );

  it.each(['E7018-1', 'E7018M'])('sets %s as E7018', (classification) => {
    const [a, b] = [ask({ classification, diameter: '1/8 in' }), ask({ diameter: '1/8 in' })];
    expect(a.ok && a.results).toEqual(b.ok && b.results);
  });

  it.each(['E7018', 'E7014', 'E7016'])('lets no %s over 5/32 in climb', (classification) => {
    const answered = ask({ classification, diameter: '3/16 in', position: 'vertical' });
    expect(answered.ok || answered.problems[0]?.text).toContain('outside the prequalified limit');
  });

  it('has no answer for a size without any row, nor for an open root in one', () => {
    const asked: Record<string, string>[] = [
      { diameter: '1/4 in' },
      { classification: 'E6010', diameter: '5/32 in', use: 'open root' },
    ];
    for (const given of asked) {
      const answered = ask(given);
      expect(answered.ok || answered.problems[0]?.text).toMatch(/no row for it: take the range/);
    }
  });

  it('refuses a size that no box carries', () => {
    const answered = ask({ diameter: '3 mm' });
    expect(answered.ok || answered.problems[0]?.field).toBe('diameter');
  });
});
