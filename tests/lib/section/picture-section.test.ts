/**
 * A thousand made-up sections of every size, photographed with every tilt, marked with noise and
 * measured: what is true must lie within what is given and taken.
 */
import { describe, expect, it } from 'vitest';
import type { SectionMarks } from '../../../lib/geometry/fillet-section.ts';
import type { Corners } from '../../../lib/geometry/homography.ts';
import type { Point } from '../../../lib/geometry/outline.ts';
import { seeded } from '../../../lib/practice/seeded.ts';
import type { PicturePlane } from '../../../lib/section/picture-plane.ts';
import { pictureSection } from '../../../lib/section/picture-section.ts';
import { mapped, randomSection } from './random-section.ts';

const random = seeded('photographs');
const between = (low: number, high: number) => low + (high - low) * random();
const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** A pinhole camera at 300 mm or more, its section in millimeters; straight on where nothing tilts. */
function photograph(tilt: number, lean: number): (point: Point) => Point {
  const turn = between(0, 7);
  const [away, focus] = [between(300, 500), between(15_000, 25_000)];
  const mirror = random() < 0.5 ? -1 : 1;
  return ([x, y]) => {
    const [u, v] = [
      x * Math.cos(turn) - mirror * y * Math.sin(turn),
      x * Math.sin(turn) + mirror * y * Math.cos(turn),
    ];
    const depth = away + u * Math.sin(lean) * Math.cos(tilt) + v * Math.sin(tilt);
    const across = u * Math.cos(lean) - v * Math.sin(lean) * Math.sin(tilt);
    return [1000 + (focus * across) / depth, 750 + (focus * v * Math.cos(tilt)) / depth];
  };
}

/** Photographs, marks and measures one section; every reading's share of what it may be off. */
function offsets(by: PicturePlane['by']): Record<string, number> {
  const { marks: drawn, truth } = randomSection(random);
  const size = between(4, 12) / truth.legA;
  const camera =
    by === 'rectangle' ? photograph(between(-0.5, 0.5), between(-0.5, 0.5)) : photograph(0, 0);
  const markingError = between(0.5, 3);
  const seen = ([x, y]: Point): Point => {
    const [across, down] = camera([x * size, y * size]);
    return [across + markingError * normal(), down + markingError * normal()];
  };
  const marks: SectionMarks = mapped(drawn, seen);
  const lengthError = between(0, 0.1);
  const said = (length: number) => length + lengthError * normal();
  const at = ([x, y]: Point) => seen([x / size, y / size]);
  const [width, height] = [between(20, 40), between(15, 30)];
  const plane: PicturePlane =
    by === 'distance'
      ? { by, ends: [at([-10, -8]), at([15, -8])], length: said(25), lengthError }
      : {
          by,
          corners: [
            [-15, -12],
            [width - 15, -12],
            [width - 15, height - 12],
            [-15, height - 12],
          ].map((corner) => at(corner as unknown as Point)) as unknown as Corners,
          width: said(width),
          height: said(height),
          lengthError,
        };
  const found = pictureSection(marks, plane, markingError);
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

describe('pictureSection', () => {
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
    const found = pictureSection(mapped(marks, see), plane, 0);
    expect(found?.legA.value).toBeCloseTo(8, 6);
    expect(found?.legB.value).toBeCloseTo(truth.legB * size, 6);
    expect(found?.legA.uncertainty).toBe(0);
    const flat: PicturePlane = {
      by: 'distance',
      ends: [corners[0], corners[1]],
      length: 30,
      lengthError: 0,
    };
    const short = pictureSection(mapped(marks, see), flat, 0);
    const wrong = Math.max(
      Math.abs((short?.legA.value ?? 8) / 8 - 1),
      Math.abs((short?.legB.value ?? 0) / (truth.legB * size) - 1),
    );
    expect(wrong).toBeGreaterThan(0.01);
  });
});
