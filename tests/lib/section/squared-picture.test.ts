/** Redrawing a tilted picture: against a pinhole camera over a chessboard whose squares are known. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Corners, inverse, mapped, squaredUp } from '../../../lib/geometry/homography.ts';
import type { Point } from '../../../lib/geometry/outline.ts';
import { product, squaredFrame } from '../../../lib/section/squared-picture.ts';
import { warpedPixels } from '../../../lib/section/warped-pixels.ts';

const picture = { width: 400, height: 300 };
const rectangle = { width: 40, height: 30 };

/** A camera over a plane in millimeters, right to the right and down to the bottom, leaning by two angles. */
const camera =
  (tilt: number, lean: number) =>
  ([x, y]: Point): Point => {
    const depth = 300 + x * Math.sin(lean) * Math.cos(tilt) + y * Math.sin(tilt);
    const across = x * Math.cos(lean) - y * Math.sin(lean) * Math.sin(tilt);
    return [200 + (1800 * across) / depth, 150 + (1800 * y * Math.cos(tilt)) / depth];
  };
const round: Point[] = [
  [-20, -15],
  [20, -15],
  [20, 15],
  [-20, 15],
];
const angle = fc.double({ min: -0.6, max: 0.6, noNaN: true });

describe('squaredFrame', () => {
  it('keeps right at the right and down below, whichever corner was marked first and whichever way round', () => {
    fc.assert(
      fc.property(angle, angle, fc.nat(3), fc.boolean(), (tilt, lean, first, back) => {
        const see = camera(tilt, lean);
        const order = back ? round.toReversed() : round;
        const corners = [...order.slice(first), ...order.slice(0, first)];
        const sides = corners.map(([x, y], i) => {
          const [u, v] = corners[(i + 1) % 4] as Point;
          return Math.hypot(u - x, v - y);
        });
        const [width, height] = sides as [number, number];
        const map = squaredUp(corners.map(see) as unknown as Corners, width, height);
        if (!map) throw new Error('no map');
        const frame = squaredFrame(map, picture, { width, height }, 500);
        if (!frame) throw new Error('no frame');
        const at = (point: Point) => mapped(frame.view, see(point)) as Point;
        const [origin, right, down] = [at([0, 0]), at([10, 0]), at([0, 10])];
        expect(right[0] - origin[0]).toBeCloseTo(10 * frame.perMillimeter, 6);
        expect(right[1] - origin[1]).toBeCloseTo(0, 6);
        expect(down[1] - origin[1]).toBeCloseTo(10 * frame.perMillimeter, 6);
        expect(down[0] - origin[0]).toBeCloseTo(0, 6);
        expect(Math.max(frame.width, frame.height)).toBeLessThanOrEqual(500);
        for (const corner of round) {
          const [x, y] = at(corner);
          expect(Math.min(x, y, frame.width - x, frame.height - y)).toBeGreaterThanOrEqual(-1);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('product', () => {
  it('of a map and the map back changes nothing', () => {
    const map = squaredUp(round.map(camera(0.3, -0.2)) as unknown as Corners, 40, 30);
    if (!map) throw new Error('no map');
    const same = product(inverse(map), map).flat();
    const scale = same[8] as number;
    expect(same.map((value) => Math.round((value / scale) * 1e9) / 1e9 + 0)).toEqual([
      1, 0, 0, 0, 1, 0, 0, 0, 1,
    ]);
  });
});

describe('warpedPixels', () => {
  it('makes a tilted chessboard square again: every square has its own color in its middle', () => {
    const see = camera(0.45, -0.3);
    const map = squaredUp(round.map(see) as unknown as Corners, 40, 30);
    const frame = map && squaredFrame(map, picture, rectangle, 600);
    if (!map || !frame) throw new Error('no map');
    const isDark = ([x, y]: Point) => (Math.floor(x / 5) + Math.floor(y / 5)) % 2 === 0;
    const data = new Uint8ClampedArray(4 * picture.width * picture.height);
    for (let row = 0; row < picture.height; row++)
      for (let column = 0; column < picture.width; column++) {
        const [x, y] = mapped(map, [column + 0.5, row + 0.5]) ?? [0, 0];
        const shade = isDark([x - 20, y - 15]) ? 0 : 240;
        data.set([shade, shade, shade, 255], 4 * (row * picture.width + column));
      }
    const squared = warpedPixels({ ...picture, data }, frame.view, frame);
    for (let x = -17.5; x < 20; x += 5)
      for (let y = -12.5; y < 15; y += 5) {
        const [column, row] = mapped(frame.view, see([x, y])) as Point;
        const at = 4 * (Math.floor(row) * frame.width + Math.floor(column));
        expect(squared.data[at], `${x}, ${y}`).toBe(isDark([x, y]) ? 0 : 240);
        expect(squared.data[at + 3]).toBe(255);
      }
  });

  it('returns the picture itself where nothing is tilted', () => {
    const data = Uint8ClampedArray.from({ length: 4 * 6 * 5 }, (_, i) => (i * 37) % 256);
    const same = warpedPixels(
      { data, width: 6, height: 5 },
      [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ],
      { width: 6, height: 5 },
    );
    expect([...same.data]).toEqual([...data]);
  });
});
