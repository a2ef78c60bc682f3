/** Curves through marks, lines, maps and outlines, each against a restatement of its own. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circularSegment } from '../../../lib/geometry/circular-segment.ts';
import { readFillet } from '../../../lib/geometry/etched-fillet.ts';
import { filletUncertainty } from '../../../lib/geometry/fillet-uncertainty.ts';
import {
  type Corners,
  type Homography,
  inverse,
  mapped,
  squaredUp,
} from '../../../lib/geometry/homography.ts';
import { facePoints } from '../../../lib/geometry/layer-face.ts';
import { insertedAlong } from '../../../lib/geometry/mark-order.ts';
import { inOrder, mainAxis } from '../../../lib/geometry/marked-lines.ts';
import type { Outline, Point } from '../../../lib/geometry/outline.ts';
import { boundsOf, placed } from '../../../lib/geometry/placed-outline.ts';
import { propagated } from '../../../lib/geometry/propagated.ts';
import { betweenMarks, smoothCurve } from '../../../lib/geometry/smooth-curve.ts';
import { withoutSpikes } from '../../../lib/geometry/without-spikes.ts';

type FilletMarks = Parameters<typeof readFillet>[0];
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const point = fc.tuple(number(-9, 9), number(-9, 9)) as fc.Arbitrary<Point>;
const close = (found: Point | undefined, [x, y]: Point, digits = 9) => {
  expect(found?.[0]).toBeCloseTo(x, digits);
  expect(found?.[1]).toBeCloseTo(y, digits);
};

describe('a smooth curve', () => {
  /** Slope at `at` of the parabola through three values (Lagrange). */
  const slope = ([s0, s1, s2]: number[], [v0, v1, v2]: number[], at: number) => {
    const [a, b, c] = [s0 as number, s1 as number, s2 as number];
    return (
      ((v0 as number) * (2 * at - b - c)) / ((a - b) * (a - c)) +
      ((v1 as number) * (2 * at - a - c)) / ((b - a) * (b - c)) +
      ((v2 as number) * (2 * at - a - b)) / ((c - a) * (c - b))
    );
  };
  it('goes from mark to mark as the cubic with the slopes of parabolas through three', () => {
    fc.assert(
      fc.property(fc.array(point, { minLength: 3, maxLength: 7 }), (marks) => {
        const along = [0];
        for (let i = 1; i < marks.length; i++) {
          const [a, b] = [marks[i - 1] as Point, marks[i] as Point];
          along.push((along[i - 1] as number) + Math.hypot(b[0] - a[0], b[1] - a[1]));
        }
        fc.pre(along.every((s, i) => i === 0 || s - (along[i - 1] as number) > 0.1));
        const curve = smoothCurve(marks);
        expect(curve).toHaveLength(8 * (marks.length - 1) + 1);
        const slopeAt = (i: number, axis: 0 | 1) => {
          const from = Math.max(0, Math.min(marks.length - 3, i - 1));
          const three = [from, from + 1, from + 2];
          return slope(
            three.map((k) => along[k] as number),
            three.map((k) => (marks[k] as Point)[axis]),
            along[i] as number,
          );
        };
        for (let i = 0; i + 1 < marks.length; i++)
          for (let part = 0; part <= 8; part++) {
            const t = part / 8;
            const gap = (along[i + 1] as number) - (along[i] as number);
            const wanted = ([0, 1] as const).map((axis) => {
              const [p, q] = [(marks[i] as Point)[axis], (marks[i + 1] as Point)[axis]];
              const controls = [
                p,
                p + (gap * slopeAt(i, axis)) / 3,
                q - (gap * slopeAt(i + 1, axis)) / 3,
                q,
              ];
              const [a, b, c, d] = controls as [number, number, number, number];
              return (
                (1 - t) ** 3 * a + 3 * (1 - t) ** 2 * t * b + 3 * (1 - t) * t ** 2 * c + t ** 3 * d
              );
            }) as unknown as Point;
            close(curve[8 * i + part], wanted, 6);
          }
      }),
      { numRuns: 12 },
    );
  });
  it('counts a mark that stands twice once, and joins two by a line', () => {
    const [a, b, c]: Point[] = [
      [0, 0],
      [0, 3],
      [4, 3],
    ] as Point[];
    const once = smoothCurve([a, b, c] as Point[]);
    expect(once).toHaveLength(17);
    expect(smoothCurve([a, a, b, c, c] as Point[])).toEqual(once);
    expect(smoothCurve([a, b] as Point[])).toEqual([a, b]);
    expect(smoothCurve([a, a, b] as Point[])).toEqual([a, b]);
    expect(smoothCurve([a] as Point[])).toEqual([a]);
    expect(smoothCurve([])).toEqual([]);
  });
  it('between its inner marks begins at the first and ends at the last of them', () => {
    const marks = [0, 1, 2, 3, 4].map((x): Point => [x, x ** 2]);
    const inner = betweenMarks(smoothCurve(marks));
    expect(inner).toHaveLength(17);
    close(inner[0], [1, 1]);
    close(inner.at(-1), [3, 9]);
    const one = betweenMarks(smoothCurve(marks.slice(0, 3)));
    expect(one).toHaveLength(1);
    close(one[0], [1, 1]);
    expect(betweenMarks(marks.slice(0, 2))).toEqual(marks.slice(0, 2));
  });
});

describe('marks of a line', () => {
  it('are turned round where that brings their ends nearer, and left alone in doubt', () => {
    const [from, to]: Point[] = [
      [0, 0],
      [10, 0],
    ] as Point[];
    // The middle one lies on the first end: only the ends of the list count.
    const list = [4, 0, 5].map((x): Point => [x, 0]);
    expect(inOrder(list, from as Point, to as Point)).toBe(list);
    const even: Point[] = [
      [5, 1],
      [5, -1],
    ];
    expect(inOrder(even, from as Point, to as Point)).toBe(even);
    const back = [9, 1].map((x): Point => [x, 0]);
    expect(inOrder(back, from as Point, to as Point)).toEqual(back.toReversed());
  });
  it('lie along the direction with the least squares beside it, far from the origin too', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(number(-9, 9), number(-1, 1)), { minLength: 3, maxLength: 8 }),
        number(0, Math.PI),
        number(-100, 100),
        (list, turn, off) => {
          const points = list.map(
            ([a, b]): Point => [
              off + a * Math.cos(turn) - b * Math.sin(turn),
              2 * off + a * Math.sin(turn) + b * Math.cos(turn),
            ],
          );
          const [mx, my] = [0, 1].map(
            (axis) => points.reduce((sum, p) => sum + (p[axis] as number), 0) / points.length,
          ) as [number, number];
          const beside = (angle: number) =>
            points.reduce(
              (sum, [x, y]) => sum + ((y - my) * Math.cos(angle) - (x - mx) * Math.sin(angle)) ** 2,
              0,
            );
          const [x, y] = mainAxis(points);
          const own = beside(Math.atan2(y, x));
          for (let i = 0; i < 90; i++)
            expect(own).toBeLessThanOrEqual(beside((i * Math.PI) / 90) + 1e-7);
        },
      ),
      { numRuns: 30 },
    );
  });
  it('take a new one where the line grows least, between the first ends of equals', () => {
    const ends = [
      [0, 0],
      [10, 0],
    ] as [Point, Point];
    const marks: Point[] = [
      [3, 0],
      [6, 0],
    ];
    const at = (mark: Point) => insertedAlong(marks, ends, mark).at;
    expect([at([1, 1]), at([4, 1]), at([9, 1]), at([12, 0]), at([-1, 0])]).toEqual([0, 1, 2, 2, 0]);
    expect(at([3, 0])).toBe(0);
    expect(insertedAlong(marks, ends, [4, 1]).marks).toEqual([marks[0], [4, 1], marks[1]]);
    expect(insertedAlong([], ends, [4, 1])).toEqual({ at: 0, marks: [[4, 1]] });
  });
});

describe('a homography', () => {
  // A strong diagonal, so that each has an inverse.
  const row = (place: number) =>
    fc
      .tuple(number(-1, 1), number(-1, 1), number(-1, 1))
      .map((values) => values.map((value, i) => (i === place ? value + 4 : value)));
  it('and its inverse make the identity', () => {
    fc.assert(
      fc.property(fc.tuple(row(0), row(1), row(2)), (map) => {
        const back = inverse(map as unknown as Homography);
        for (const [r, values] of map.entries())
          for (const column of [0, 1, 2] as const)
            expect(
              values.reduce((sum, value, k) => sum + value * (back[k]?.[column] as number), 0),
            ).toBeCloseTo(r === column ? 1 : 0, 8);
      }),
      { numRuns: 60 },
    );
  });
  it('has no image on the horizon or beyond', () => {
    const map: Homography = [
      [1, 0, 0],
      [0, 1, 0],
      [1, 0, 0],
    ];
    expect([mapped(map, [2, 6]), mapped(map, [0, 6]), mapped(map, [-1, 6])]).toEqual([
      [1, 3],
      undefined,
      undefined,
    ]);
  });
  it('takes the corners of any tilted rectangle to those of the true one, wherever it lies', () => {
    const off = number(-0.3, 0.3);
    fc.assert(
      fc.property(
        fc.array(fc.tuple(off, off), { minLength: 4, maxLength: 4 }),
        fc.tuple(number(-50, 50), number(-50, 50)),
        fc.constantFrom(1e-3, 1, 1e4),
        fc.boolean(),
        (offs, [x, y], size, mirrored) => {
          const square: Point[] = [
            [0, 0],
            [1, 0],
            [1, 1],
            [0, 1],
          ];
          const corners = square.map(([a, b], i): Point => {
            const [dx, dy] = offs[i] as [number, number];
            const [px, py] = [size * (x + a + dx), size * (y + b + dy)];
            return mirrored ? [px, -py] : [px, py];
          }) as unknown as Corners;
          const map = squaredUp(corners, 30, 20);
          expect(map).toBeDefined();
          for (const [i, corner] of corners.entries()) {
            const [a, b] = square[i] as Point;
            close(map && mapped(map, corner), [30 * a, 20 * b], 5);
          }
        },
      ),
      { numRuns: 100 },
    );
  });
  it('is none for three corners in a line within a thousandth of a turn, at any size, either way round', () => {
    for (const size of [1e-3, 1, 1e3])
      for (const way of [1, -1]) {
        const bent = (turn: number) =>
          squaredUp(
            [
              [0, 0],
              [size, 0],
              [2 * size, way * turn * size],
              [size, way * size],
            ],
            2,
            1,
          );
        expect([bent(0.0009), bent(0), bent(-0.01)]).toEqual([undefined, undefined, undefined]);
        expect(bent(0.0011)).toBeDefined();
      }
    const twice: Corners = [
      [0, 0],
      [0, 0],
      [1, 1],
      [0, 1],
    ];
    expect(squaredUp(twice, 2, 1)).toBeUndefined();
  });
});

describe('outlines', () => {
  const square: Outline = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ];
  it('keep corners that only mirror each other, and never fewer than three', () => {
    expect(withoutSpikes(square)).toEqual(square);
    const thin: Outline = [
      [0, 0],
      [1, 0],
      [1, 0],
    ];
    expect(withoutSpikes(thin)).toEqual(thin);
    const there: Outline = [
      [0, 0],
      [1, 0],
      [0, 0],
    ];
    expect(withoutSpikes(there)).toEqual(there);
    expect(withoutSpikes([...square, [-1, 1 + 1e-10]])).toHaveLength(4);
    expect(withoutSpikes([...square, [-1, 1 + 1e-8]])).toHaveLength(5);
  });
  it('seen from another frame run counterclockwise again, and fill their box', () => {
    const corner: Outline = [
      [0, 0],
      [2, 0],
      [0, 1],
    ];
    expect(placed(corner, { x: [0, 1], y: [-1, 0] })).toEqual([
      [0, 0],
      [0, 2],
      [-1, 0],
    ]);
    expect(placed(corner, { x: [1, 0], y: [0, -1] })).toEqual([
      [0, -1],
      [2, 0],
      [0, 0],
    ]);
    expect(boundsOf([corner, [[-3, 5]]])).toEqual({ left: -3, bottom: 0, right: 2, top: 5 });
    expect(boundsOf([[[4, -5]], corner])).toEqual({ left: 0, bottom: -5, right: 4, top: 1 });
  });
  it('of a face have a corner at each of 32 chords that lies between their ends', () => {
    const face = { halfWidth: 4, height: 2, crown: 1 };
    const whole = facePoints(face, -4, 4);
    expect(facePoints(face, 0, 4)).toEqual(whole.slice(16));
    expect(facePoints(face, -2, 1)).toEqual(whole.slice(8, 21));
    expect(facePoints(face, 0.01, 0.24)).toHaveLength(2);
  });
});

it('a segment between chord and arc is that of its circle, by slices', () => {
  fc.assert(
    fc.property(number(1, 20), number(0.02, 0.5), fc.constantFrom(1, -1), (chord, share, sign) => {
      const rise = share * chord;
      const radius = (chord ** 2 / 4 + rise ** 2) / (2 * rise);
      let sum = 0;
      for (let i = 0; i < 4000; i++) {
        const x = ((i + 0.5) / 4000 - 0.5) * chord;
        sum += (Math.sqrt(radius ** 2 - x ** 2) - (radius - rise)) * (chord / 4000);
      }
      expect(circularSegment(chord, sign * rise) / (sign * sum)).toBeCloseTo(1, 3);
    }),
    { numRuns: 20 },
  );
  // So flat that it is a parabola of two thirds, to all digits that count.
  expect(circularSegment(10, 1e-6)).toBeCloseTo((2 / 3) * 1e-5, 12);
  expect(circularSegment(10, 0.002) / ((2 / 3) * 0.02)).toBeCloseTo(1, 6);
  expect(circularSegment(10, 0)).toBe(0);
});

it('the doubt of a section is that of all its coordinates, one by one', () => {
  const marks: FilletMarks = {
    root: [0.2, -0.1],
    toeA: [8, 0.1],
    toeB: [-0.2, 6],
    face: [
      [6, 1.9],
      [4, 3.4],
      [1.8, 4.9],
    ],
    fusion: [
      [6, -0.9],
      [3, -1.1],
      [-1, -1.2],
      [-0.9, 3],
      [-0.7, 5],
    ],
    plateA: [
      [9, 0],
      [12, 0.1],
    ],
    plateB: [
      [0, 7],
      [0.1, 11],
    ],
  };
  const names = ['root', 'toeA', 'toeB', 'face', 'fusion', 'plateA', 'plateB'] as const;
  const lists = names.map((name) => {
    const value = marks[name];
    return typeof value[0] === 'number' ? [value as Point] : (value as readonly Point[]);
  });
  const numbers = lists.flat().flat() as number[];
  const read = (values: readonly number[]) => {
    let next = 0;
    const moved = Object.fromEntries(
      lists.map((list, k) => {
        const points = list.map((): Point => [values[next++] as number, values[next++] as number]);
        return [names[k], k < 3 ? points[0] : points];
      }),
    );
    return readFillet(moved as unknown as FilletMarks) as unknown as Record<string, number>;
  };
  const wanted = propagated(
    read,
    numbers,
    numbers.map(() => 0.02),
  );
  const found = filletUncertainty(marks, 0.02) as Record<string, number>;
  expect(Object.keys(found).sort()).toEqual(Object.keys(wanted).sort());
  expect(Object.keys(found).length).toBeGreaterThan(10);
  for (const [name, value] of Object.entries(wanted))
    expect(found[name], name).toBeCloseTo(value, 9);
});
