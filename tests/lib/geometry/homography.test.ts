/** Squaring up against maps that are known beforehand, and against a general solver. */
import fc from 'fast-check';
import { lusolve } from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  type Corners,
  type Homography,
  inverse,
  mapped,
  squaredUp,
} from '../../../lib/geometry/homography.ts';
import type { Point } from '../../../lib/geometry/outline.ts';

/** A pinhole camera above a plane, tilted about two axes and turned. */
const camera = fc
  .record({
    tilt: fc.double({ min: -0.6, max: 0.6, noNaN: true }),
    lean: fc.double({ min: -0.6, max: 0.6, noNaN: true }),
    turn: fc.double({ min: -3.1, max: 3.1, noNaN: true }),
    away: fc.double({ min: 150, max: 600, noNaN: true }),
  })
  .map(({ tilt, lean, turn, away }): ((point: Point) => Point) => {
    const [ct, st, cl, sl] = [Math.cos(tilt), Math.sin(tilt), Math.cos(lean), Math.sin(lean)];
    const [cz, sz] = [Math.cos(turn), Math.sin(turn)];
    return ([x, y]) => {
      const [u, v] = [x * cz - y * sz, x * sz + y * cz];
      const depth = away + u * sl * ct + v * st;
      return [1000 + (3000 * (u * cl - v * sl * st)) / depth, 800 + (3000 * v * ct) / depth];
    };
  });
const sides = fc.record({
  width: fc.double({ min: 5, max: 80, noNaN: true }),
  height: fc.double({ min: 5, max: 80, noNaN: true }),
});
const rectangle = (width: number, height: number): Point[] => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
];

describe('squaredUp', () => {
  it('takes the picture of any point of a tilted plane back to where it lies', () => {
    fc.assert(
      fc.property(
        camera,
        sides,
        fc.double({ min: -1, max: 2, noNaN: true }),
        fc.double({ min: -1, max: 2, noNaN: true }),
        (photograph, { width, height }, across, up) => {
          const corners = rectangle(width, height).map(photograph) as unknown as Corners;
          const map = squaredUp(corners, width, height);
          const point: Point = [across * width, up * height];
          const found = mapped(map as Homography, photograph(point)) as Point;
          expect(found[0]).toBeCloseTo(point[0], 6);
          expect(found[1]).toBeCloseTo(point[1], 6);
        },
      ),
    );
  });

  it('agrees with the eight linear equations of four point pairs, solved by a general solver', () => {
    fc.assert(
      fc.property(camera, sides, (photograph, { width, height }) => {
        const corners = rectangle(width, height).map(photograph) as unknown as Corners;
        const rows = corners.flatMap(([x, y], i) => {
          const [u, v] = rectangle(width, height)[i] as Point;
          return [
            [x, y, 1, 0, 0, 0, -u * x, -u * y],
            [0, 0, 0, x, y, 1, -v * x, -v * y],
          ];
        });
        const aims = rectangle(width, height).flat();
        const solved = (lusolve(rows, aims) as number[][]).map(([value]) => value as number);
        const map = squaredUp(corners, width, height) as Homography;
        const general: Homography = [
          solved.slice(0, 3) as unknown as Homography[0],
          solved.slice(3, 6) as unknown as Homography[1],
          [solved[6] as number, solved[7] as number, 1],
        ];
        for (const share of [0.1, 0.4, 0.8]) {
          const point = photograph([share * width, (1 - share ** 2) * height]);
          const [ours, theirs] = [mapped(map, point), mapped(general, point)] as [Point, Point];
          expect(ours[0]).toBeCloseTo(theirs[0], 5);
          expect(ours[1]).toBeCloseTo(theirs[1], 5);
        }
      }),
    );
  });

  it('does not mind the way round, only that it goes round', () => {
    const corners: Corners = [
      [100, 100],
      [500, 120],
      [480, 420],
      [90, 400],
    ];
    const [a, b, c, d] = corners;
    expect(mapped(squaredUp(corners, 40, 30) as Homography, c)).toEqual([
      expect.closeTo(40, 9),
      expect.closeTo(30, 9),
    ]);
    expect(mapped(squaredUp([a, d, c, b], 30, 40) as Homography, c)).toEqual([
      expect.closeTo(30, 9),
      expect.closeTo(40, 9),
    ]);
    expect(squaredUp([a, c, b, d], 40, 30)).toBeUndefined();
  });

  it.each([
    [
      'three in a line',
      [
        [0, 0],
        [100, 0],
        [200, 0],
        [100, 100],
      ],
    ],
    [
      'one inside the others',
      [
        [0, 0],
        [200, 0],
        [50, 50],
        [0, 200],
      ],
    ],
    [
      'two in one place',
      [
        [0, 0],
        [0, 0],
        [100, 100],
        [0, 100],
      ],
    ],
  ])('refuses corners with %s', (_, corners) => {
    expect(squaredUp(corners as unknown as Corners, 1, 1)).toBeUndefined();
  });

  it('has no place for what lies beyond the horizon', () => {
    const corners: Corners = [
      [0, 0],
      [400, 0],
      [300, 200],
      [100, 200],
    ];
    const map = squaredUp(corners, 10, 10) as Homography;
    expect(mapped(map, [200, 150])).toBeDefined();
    expect(mapped(map, [200, 401])).toBeUndefined();
  });
});

describe('inverse', () => {
  it('takes every point back', () => {
    fc.assert(
      fc.property(camera, sides, (photograph, { width, height }) => {
        const corners = rectangle(width, height).map(photograph) as unknown as Corners;
        const map = squaredUp(corners, width, height) as Homography;
        const there = mapped(map, [1010, 790]) as Point;
        const back = mapped(inverse(map), there) as Point;
        expect(back[0]).toBeCloseTo(1010, 4);
        expect(back[1]).toBeCloseTo(790, 4);
      }),
    );
  });
});
