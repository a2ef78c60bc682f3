/**
 * A thousand made-up grooves of every size, open and on a strip, photographed with every tilt, marked
 * with noise and measured: what is true must lie within what is given and taken.
 */
import { describe, expect, it } from 'vitest';
import type { Corners } from '../../../lib/geometry/homography.ts';
import type { Point } from '../../../lib/geometry/outline.ts';
import { seeded } from '../../../lib/practice/seeded.ts';
import { pictureGroove } from '../../../lib/section/picture-groove.ts';
import type { PicturePlane } from '../../../lib/section/picture-plane.ts';
import { photographed } from './photographed.ts';
import { mappedGroove, randomGroove } from './random-groove.ts';

const random = seeded('photographs of grooves');
const between = (low: number, high: number) => low + (high - low) * random();

/** Readings that are shown as nothing where they would be below it. */
const none = /capHeight|underfill|rootHeight|rootHollow/;

/** Photographs, marks and measures one groove; every reading's share of what it may be off. */
function offsets(by: PicturePlane['by']): Record<string, number> {
  const { marks: drawn, truth } = randomGroove(random);
  const size = between(6, 20) / (truth.thickness as number);
  const { seen, plane, markingError } = photographed(random, by, size);
  const found = pictureGroove(mappedGroove(drawn, seen), plane, markingError);
  return Object.fromEntries(
    Object.entries(truth).map(([name, value]) => {
      const power = name.endsWith('Area') ? 2 : name === 'dilution' ? 0 : 1;
      const reading = found?.[name as keyof typeof found];
      const read = none.test(name) ? Math.max(0, reading?.value ?? Number.NaN) : reading?.value;
      const off = Math.abs((read ?? Number.NaN) - value * size ** power);
      return [name, off / (reading?.uncertainty ?? Number.NaN)];
    }),
  );
}

describe('pictureGroove', () => {
  it.each(['distance', 'rectangle'] as const)(
    'holds the true value in at least 95 of 100 of 500 grooves scaled by a %s, and is not padded',
    (by) => {
      const offs: Record<string, number[]> = {};
      for (let i = 0; i < 500; i++)
        for (const [name, off] of Object.entries(offsets(by)))
          offs[name] = [...(offs[name] ?? []), off];
      expect(Object.keys(offs)).toHaveLength(17);
      for (const [name, all] of Object.entries(offs)) {
        const held = all.filter((off) => off <= 1).length / all.length;
        expect(held, name).toBeGreaterThanOrEqual(0.95);
        const counted = all.filter((off) => off > 0);
        const mean = counted.reduce((sum, off) => sum + off, 0) / counted.length;
        expect(mean, `${name} is padded`).toBeGreaterThan(0.2);
      }
    },
    120_000,
  );

  it('reads a tilted groove as if it lay flat', () => {
    const { marks, truth } = randomGroove(seeded('tilted groove'), false);
    const scale = 10 / (truth.thickness as number);
    const see = ([x, y]: Point): Point => {
      const depth = 300 + y * scale * Math.sin(0.4);
      return [
        800 + (20_000 * x * scale) / depth,
        600 - (20_000 * y * scale * Math.cos(0.4)) / depth,
      ];
    };
    const corners = [
      [-500, -100],
      [500, -100],
      [500, 700],
      [-500, 700],
    ].map((corner) => see(corner as unknown as Point)) as unknown as Corners;
    const plane: PicturePlane = {
      by: 'rectangle',
      corners,
      width: 1000 * scale,
      height: 800 * scale,
      lengthError: 0,
    };
    const found = pictureGroove(mappedGroove(marks, see), plane, 0);
    for (const name of ['capWidth', 'thickness', 'rootWidth'] as const)
      expect(found?.[name]?.value, name).toBeCloseTo((truth[name] as number) * scale, 6);
  });
});
