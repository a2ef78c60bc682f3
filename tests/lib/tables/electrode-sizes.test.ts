/** Sizes as boxes print them in either system: AWS A5.1 and A5.1M, table of standard sizes (from memory). */
import { describe, expect, it } from 'vitest';
import { tradeSize } from '../../../lib/tables/electrode-sizes.ts';

const boxes: [inches: number, millimeters: number[]][] = [
  [1 / 16, [1.6]],
  [5 / 64, [2]],
  [3 / 32, [2.4, 2.5]],
  [1 / 8, [3.2]],
  [5 / 32, [4]],
  [3 / 16, [4.8, 5]],
  [7 / 32, [5.6]],
  [1 / 4, [6, 6.4]],
  [5 / 16, [8]],
  [3 / 8, [9.5, 10]],
];

describe('tradeSize', () => {
  it.each(boxes)('knows %d in, sold as %j mm', (inches, millimeters) => {
    expect(tradeSize(inches)).toBe(inches);
    for (const size of millimeters) expect(tradeSize(size / 25.4), `${size} mm`).toBe(inches);
  });

  it('takes a decimal of an inch for the size that was meant', () => {
    expect([0.094, 0.125, 0.156, 0.188, 0.25].map(tradeSize)).toEqual([
      3 / 32,
      1 / 8,
      5 / 32,
      3 / 16,
      1 / 4,
    ]);
  });

  it('reads a size that is rounded by 0.03 mm, and no farther off', () => {
    expect(tradeSize(4.0299 / 25.4)).toBe(5 / 32);
    expect(tradeSize(4.0301 / 25.4)).toBeUndefined();
    expect(tradeSize((3.15 - 0.0301) / 25.4)).toBeUndefined();
  });

  it.each([0.07, 0.1, 0.11, 0.14, 0.17, 0.21, 0.28, 0.35])('knows no box of %d in', (diameter) => {
    expect(tradeSize(diameter)).toBeUndefined();
  });
});
