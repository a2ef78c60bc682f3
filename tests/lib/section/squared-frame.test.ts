/** How large a squared-up picture is, and how each of its pixels is mixed: worked out by hand for pictures that only turn. */
import { describe, expect, it } from 'vitest';
import type { Homography } from '../../../lib/geometry/homography.ts';
import { mapped } from '../../../lib/geometry/homography.ts';
import { squaredFrame } from '../../../lib/section/squared-picture.ts';
import { warpedPixels } from '../../../lib/section/warped-pixels.ts';

/** A tenth of a millimeter for a pixel; the rectangle's first corner lies at pixel (100, 80). */
const straight: Homography = [
  [0.1, 0, -10],
  [0, 0.1, -8],
  [0, 0, 1],
];
const rectangle = { width: 4, height: 9 };
const beside = [28, 31, 33, 255];

describe('squaredFrame', () => {
  it('shows no more pixels than the picture has, and 1.2 times the side of its square around', () => {
    const frame = squaredFrame(straight, { width: 4000, height: 3000 }, rectangle, 10_000);
    // The square as large as 4 by 9 has sides of 6: 7.2 mm around, 100 mm and more were seen.
    expect(frame?.perMillimeter).toBeCloseTo(10, 9);
    expect(frame?.width).toBe(10 * (4 + 7.2 + 7.2));
    expect(frame?.height).toBe(10 * (9 + 7.2 + 7.2));
    const [x, y] = (frame && mapped(frame.view, [100, 80])) ?? [];
    expect(x).toBeCloseTo(72, 9);
    expect(y).toBeCloseTo(72, 9);
  });

  it('ends where the picture ends', () => {
    const frame = squaredFrame(straight, { width: 160, height: 200 }, rectangle, 10_000);
    // To the left 10 mm lie before the corner and 7.2 are shown; to the right 6 mm, of which 4 are inside.
    expect(frame?.width).toBe(10 * (7.2 + 6));
    expect(frame?.height).toBe(10 * (7.2 + 12));
  });

  it('is made smaller until its longest side fits', () => {
    const frame = squaredFrame(straight, { width: 4000, height: 3000 }, rectangle, 117);
    expect(frame?.perMillimeter).toBeCloseTo(117 / 23.4, 9);
    expect([frame?.width, frame?.height]).toEqual([92, 117]);
  });

  it('is nothing where the whole picture lies far off, and a pixel at least', () => {
    const far: Homography = [
      [0.1, 0, 500],
      [0, 0.1, -8],
      [0, 0, 1],
    ];
    expect(squaredFrame(far, { width: 100, height: 100 }, rectangle, 500)).toBeUndefined();
    const dot = squaredFrame(
      straight,
      { width: 4000, height: 3000 },
      { width: 0.01, height: 9 },
      1,
    );
    expect([dot?.width, dot?.height]).toEqual([1, 1]);
  });
});

describe('warpedPixels', () => {
  /** Three by two pixels; each part of a color has its own run of values. */
  const source = {
    width: 3,
    height: 2,
    data: Uint8ClampedArray.from(
      { length: 24 },
      (_, i) => 100 * (i >= 12 ? 1 : 0) + 20 * Math.floor((i % 12) / 4) + (i % 4),
    ),
  };
  const pixel = (column: number, row: number) =>
    [0, 1, 2, 3].map((part) => 100 * row + 20 * column + part);
  const moved = (x: number, y: number): Homography => [
    [1, 0, x],
    [0, 1, y],
    [0, 0, 1],
  ];
  const at = (view: Homography, column: number, row: number, width = 3, height = 2) => {
    const { data } = warpedPixels(source, view, { width, height });
    return [...data.slice(4 * (row * width + column), 4 * (row * width + column) + 4)];
  };

  it('mixes a pixel of the four that it falls between, by how near each is', () => {
    // Moved a quarter to the left and half up: a quarter of the right pixel, half of the lower ones.
    const view = moved(-0.25, -0.5);
    expect(at(view, 0, 0)).toEqual(pixel(0, 0).map((one) => one + 0.25 * 20 + 0.5 * 100));
    expect(at(view, 1, 0)).toEqual(pixel(1, 0).map((one) => one + 0.25 * 20 + 0.5 * 100));
  });

  it('takes the last pixel up to the edge of the picture, and the dark beyond it', () => {
    expect(at(moved(-0.4, 0), 2, 0)).toEqual(pixel(2, 0));
    expect(at(moved(0.4, 0), 0, 0)).toEqual(pixel(0, 0));
    expect(at(moved(0, 0.4), 1, 0)).toEqual(pixel(1, 0));
    expect(at(moved(0, -0.4), 1, 1)).toEqual(pixel(1, 1));
    expect(at(moved(0.6, 0), 0, 0)).toEqual(beside);
    expect(at(moved(0, 0.6), 1, 0)).toEqual(beside);
    expect(at(moved(-0.6, 0), 2, 0)).toEqual(beside);
    expect(at(moved(0, -0.6), 1, 1)).toEqual(beside);
  });

  it('shows nothing of what lies behind the camera', () => {
    const behind: Homography = [
      [-1, 0, 0],
      [0, -1, 0],
      [0, 0, -1],
    ];
    expect(at(behind, 0, 0)).toEqual(beside);
  });

  it('fills all of a larger picture, whole pixels where they were', () => {
    const { data } = warpedPixels(source, moved(1, 2), { width: 5, height: 4 });
    expect(data).toHaveLength(80);
    for (let row = 0; row < 4; row++)
      for (let column = 0; column < 5; column++) {
        const inside = column >= 1 && column <= 3 && row >= 2;
        expect([...data.slice(4 * (5 * row + column), 4 * (5 * row + column) + 4)]).toEqual(
          inside ? pixel(column - 1, row - 2) : beside,
        );
      }
  });
});
