/**
 * A thousand made-up sections of every size, photographed with every tilt, marked with noise and
 * measured: what is true must lie within what is given and taken.
 */
import { describe, expect, it } from 'vitest';
import type { Corners } from '../../../lib/geometry/homography.ts';
import type { Point } from '../../../lib/geometry/outline.ts';
import { seeded } from '../../../lib/practice/seeded.ts';
import { pictureFillet } from '../../../lib/section/picture-fillet.ts';
import type { PicturePlane } from '../../../lib/section/picture-plane.ts';
import { photographed } from './photographed.ts';
import { mapped, randomSection } from './random-section.ts';

const random = seeded('photographs');

/** Photographs, marks and measures one section; every reading's share of what it may be off. */
function offsets(by: PicturePlane['by']): Record<string, number> {
  const { marks: drawn, truth } = randomSection(random);
  const size = (4 + 8 * random()) / truth.legA;
  const { seen, plane, markingError } = photographed(random, by, size);
  const found = pictureFillet(mapped(drawn, seen), plane, markingError);
  return Object.fromEntries(
    Object.entries(truth).map(([name, value]) => {
      const power = name.endsWith('Area') ? 2 : /angle|dilution/.test(name) ? 0 : 1;
      const reading = found?.[name as keyof typeof truth];
      const read = /rise|hollow/.test(name)
        ? Math.max(0, reading?.value ?? Number.NaN)
        : reading?.value;
      const off = Math.abs((read ?? Number.NaN) - value * size ** power);
      return [name, off / (reading?.uncertainty ?? Number.NaN)];
    }),
  );
}

describe('pictureFillet', () => {
  it.each(['distance', 'rectangle'] as const)(
    'holds the true value in at least 95 of 100 of 500 sections scaled by a %s, and is not padded',
    (by) => {
      const all = Array.from({ length: 500 }, () => offsets(by));
      for (const name of Object.keys(all[0] as object)) {
        const offs = all.map((one) => one[name] as number);
        expect(offs.filter((off) => off <= 1).length, name).toBeGreaterThanOrEqual(475);
        const counted = offs.filter((off) => off > 0);
        const mean = counted.reduce((sum, off) => sum + off, 0) / counted.length;
        expect(mean, `${name} is padded`).toBeGreaterThan(0.25);
      }
    },
    60_000,
  );

  it('reads a tilted picture as if it lay flat, where straight scaling reads it short', () => {
    const { marks, truth } = randomSection(seeded('tilted'));
    const { photograph } = photographed(seeded('a leaning camera'), 'distance', 1);
    const tilted = photograph(0.4, 0);
    const size = 8 / truth.legA;
    const see = ([x, y]: Point): Point => tilted([x * size, y * size]);
    const corners = [
      [-10, -10],
      [20, -10],
      [20, 15],
      [-10, 15],
    ].map((corner) => tilted(corner as unknown as Point)) as unknown as Corners;
    const plane: PicturePlane = { by: 'rectangle', corners, width: 30, height: 25, lengthError: 0 };
    const found = pictureFillet(mapped(marks, see), plane, 0);
    expect(found?.legA.value).toBeCloseTo(8, 6);
    expect(found?.legB.value).toBeCloseTo(truth.legB * size, 6);
    expect(found?.legA.uncertainty).toBe(0);
    const flat: PicturePlane = {
      by: 'distance',
      ends: [corners[0], corners[1]],
      length: 30,
      lengthError: 0,
    };
    const short = pictureFillet(mapped(marks, see), flat, 0);
    const wrong = Math.max(
      Math.abs((short?.legA.value ?? 8) / 8 - 1),
      Math.abs((short?.legB.value ?? 0) / (truth.legB * size) - 1),
    );
    expect(wrong).toBeGreaterThan(0.01);
  });
});
