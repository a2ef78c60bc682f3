/** A row of coupons and electrodes against hand sums and the mass of pipe that ASME B36.10 prints. */
import { describe, expect, it } from 'vitest';
import { pieceOf, rodsOfRow } from '../../../lib/class/coupon-row.ts';
import { NoAnswer } from '../../../lib/no-answer.ts';

const bar = {
  piece: 'flat bar',
  thickness: 0.375,
  width: 4,
  length: 8,
  pieces: 2,
  electrodes: 5,
} as const;
const pipe = {
  piece: 'pipe',
  nps: '6',
  schedule: '80',
  length: 5,
  pieces: 2,
  electrodes: 9,
} as const;
const rods = { ...bar, classification: 'E7018', diameter: 0.125 };

describe('a row of coupons', () => {
  it('weighs a bar by its section at 0.2836 lb/in³', () => {
    const piece = pieceOf(bar, 'coupons.1');
    expect(piece).toMatchObject({ section: 'flat bar {3/8 in} × {4 in}', length: 8, count: 2 });
    // 3/8 · 4 = 1.5 in², times 0.2836.
    expect(piece.perInch).toBeCloseTo(0.4254, 9);
    expect(piece).not.toHaveProperty('pipe');
  });

  it('weighs pipe as its table does: NPS 6 Sch 80 has 28.60 lb/ft (ASME B36.10, from memory)', () => {
    const piece = pieceOf(pipe, 'coupons.1');
    expect(piece).toMatchObject({ section: 'pipe NPS 6 Sch 80', pipe: true, length: 5, count: 2 });
    expect(Math.abs(piece.perInch * 12 - 28.6)).toBeLessThan(0.05);
  });

  it('names its electrodes with their mass: 0.048724 lb of core over 0.70', () => {
    const found = rodsOfRow(rods, 'coupons.1');
    expect(found).toMatchObject({ kind: 'E7018 {1/8 in}', count: 5 });
    expect(found.each).toBeCloseTo(0.048724 / 0.7, 5);
  });

  it.each([
    ['length', 'Length of the piece', () => pieceOf({ ...bar, length: undefined }, 'coupons.2')],
    ['thickness', 'Thickness', () => pieceOf({ ...bar, thickness: undefined }, 'coupons.2')],
    ['width', 'Width', () => pieceOf({ ...bar, width: undefined }, 'coupons.2')],
    ['nps', 'Nominal pipe size', () => pieceOf({ ...pipe, nps: undefined }, 'coupons.2')],
    ['schedule', 'Schedule', () => pieceOf({ ...pipe, schedule: undefined }, 'coupons.2')],
    ['classification', 'Electrode', () => rodsOfRow(bar, 'coupons.2')],
    [
      'diameter',
      'Electrode diameter',
      () => rodsOfRow({ ...bar, classification: 'E7018' }, 'coupons.2'),
    ],
  ])('without %s tells which field of which row is missing', (field, what, ask) => {
    const missing = new NoAnswer(`${what} is missing`, `coupons.2.${field}`);
    expect(ask).toThrow(missing);
    try {
      ask();
    } catch (thrown) {
      expect((thrown as NoAnswer).field).toBe(missing.field);
    }
  });
});
