/**
 * Sizes held to the plain-end weights that the same standard prints, in pounds a foot (from memory):
 * outside diameter and wall both go into a weight. Steel weighs 10.69 (D - t) t lb/ft there; older
 * printings took 10.68. Millimeters are held to the inches.
 */
import { describe, expect, it } from 'vitest';
import {
  citePipe,
  npsSizes,
  pipeRows,
  type Schedule,
  schedules,
} from '../../../lib/tables/pipe-b36.10.ts';

/** In the order of `schedules`: 40, 80, 120, 160, STD, XS, XXS; - where the course has none. */
const weights: Readonly<Record<(typeof npsSizes)[number], string>> = {
  '1/2': '0.85 1.09 - 1.31 0.85 1.09 1.71',
  '3/4': '1.13 1.47 - 1.94 1.13 1.47 2.44',
  '1': '1.68 2.17 - 2.84 1.68 2.17 3.66',
  '1-1/4': '2.27 3.00 - 3.77 2.27 3.00 5.21',
  '1-1/2': '2.72 3.63 - 4.86 2.72 3.63 6.41',
  '2': '3.65 5.02 - 7.47 3.65 5.02 9.03',
  '2-1/2': '5.80 7.66 - 10.01 5.80 7.66 13.70',
  '3': '7.58 10.26 - 14.34 7.58 10.26 18.60',
  '3-1/2': '9.12 12.52 - - 9.12 12.52 -',
  '4': '10.80 15.00 19.02 22.53 10.80 15.00 27.57',
  '5': '14.63 20.80 27.06 32.99 14.63 20.80 38.59',
  '6': '18.99 28.60 36.43 45.39 18.99 28.60 53.21',
  '8': '28.58 43.43 60.77 74.76 28.58 43.43 72.49',
  '10': '40.52 64.49 89.38 115.75 40.52 54.79 104.23',
  '12': '53.57 88.71 125.61 160.42 49.61 65.48 125.61',
};

describe('pipe', () => {
  it.each(npsSizes)('of NPS %s weighs what the standard prints, at every schedule', (nps) => {
    const { outside, walls } = pipeRows[nps];
    const printed = weights[nps].split(' ');
    for (const [index, schedule] of schedules.entries()) {
      const wall = walls[schedule];
      expect(wall === undefined, schedule).toBe(printed[index] === '-');
      if (!wall) continue;
      const weight = 10.69 * (outside[0] - wall[0]) * wall[0];
      expect(Math.abs(weight - Number(printed[index])), schedule).toBeLessThan(
        0.0055 + 0.001 * weight,
      );
    }
  });

  it.each(npsSizes)('of NPS %s has millimeters that are its inches, rounded as printed', (nps) => {
    const { outside, walls } = pipeRows[nps];
    expect(Math.abs(outside[1] - 25.4 * outside[0])).toBeLessThan(0.0501);
    expect(Number(outside[1].toFixed(1))).toBe(outside[1]);
    for (const [inches, millimeters] of Object.values(walls)) {
      expect(Math.abs(millimeters - 25.4 * inches)).toBeLessThan(0.0101);
      expect(Number(millimeters.toFixed(2))).toBe(millimeters);
    }
  });

  it('has inches of weight-class walls, and of two heavy ones, from memory', () => {
    const recalled = (nps: (typeof npsSizes)[number]) =>
      schedules.filter((schedule: Schedule) => citePipe(nps, schedule).known === 'memory');
    for (const nps of npsSizes)
      expect(recalled(nps)).toEqual(
        nps === '12' ? ['120', '160', 'STD', 'XS', 'XXS'] : ['STD', 'XS', 'XXS'],
      );
  });
});
