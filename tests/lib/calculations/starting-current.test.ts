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
    ['4.0 mm', '5/32 in'],
    ['0.125', '1/8 in'],
  ])('takes a box marked %s for %s', (written, trade) => {
    const [a, b] = [ask({ diameter: written }), ask({ diameter: trade })];
    expect(a.ok && a.results).toEqual(b.ok && b.results);
    expect(a.ok).toBe(true);
  });

  it('gives the typical range and no setting for a size without a row', () => {
    const answered = ask({ diameter: '3/16 in' });
    expect(answered.ok || answered.problems[0]?.text).toContain('{200 A} to {275 A}');
  });

  it('refuses a size that no box carries', () => {
    const answered = ask({ diameter: '3 mm' });
    expect(answered.ok || answered.problems[0]?.field).toBe('diameter');
  });
});
