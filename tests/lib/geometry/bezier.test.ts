/** Bézier curves against de Casteljau's construction and the shoelace of their chords. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bezierPoint, bow, type Cubic, sweptArea } from '../../../lib/geometry/bezier.ts';
import type { Point } from '../../../lib/geometry/outline.ts';

const number = fc.double({ min: -9, max: 9, noNaN: true });
const point = fc.tuple(number, number) as fc.Arbitrary<Point>;
const cubic = fc.tuple(point, point, point, point) as fc.Arbitrary<Cubic>;
const share = fc.double({ min: 0, max: 1, noNaN: true });

/** The corners drawn together in thirds, halves, whatever `t` is, until one point is left. */
function drawnTogether(corners: readonly Point[], t: number): Point {
  const [only, ...others] = corners as [Point, ...Point[]];
  if (others.length === 0) return only;
  return drawnTogether(
    others.map(([x, y], i) => {
      const [fromX, fromY] = corners[i] as Point;
      return [fromX + t * (x - fromX), fromY + t * (y - fromY)];
    }),
    t,
  );
}

it('a point on a curve is where its corners meet when they are drawn together (de Casteljau)', () => {
  fc.assert(
    fc.property(cubic, share, (corners, t) => {
      const [x, y] = bezierPoint(corners, t);
      expect(x).toBeCloseTo(drawnTogether(corners, t)[0], 9);
      expect(y).toBeCloseTo(drawnTogether(corners, t)[1], 9);
    }),
  );
});

it('the area that a curve sweeps is that of its chords, seen from the origin', () => {
  fc.assert(
    fc.property(cubic, (corners) => {
      let sum = 0;
      for (let i = 0; i < 500; i++) {
        const [ax, ay] = drawnTogether(corners, i / 500);
        const [bx, by] = drawnTogether(corners, (i + 1) / 500);
        sum += (ax * by - ay * bx) / 2;
      }
      expect(sweptArea(corners)).toBeCloseTo(sum, 2);
    }),
    { numRuns: 10 },
  );
});

it('a bow is a parabola over its chord, highest in the middle', () => {
  fc.assert(
    fc.property(point, point, point, share, (a, b, crown, t) => {
      const [x, y] = bezierPoint(bow(a, b, crown), t);
      const rise = 4 * t * (1 - t);
      expect(x).toBeCloseTo(a[0] + t * (b[0] - a[0]) + rise * crown[0], 9);
      expect(y).toBeCloseTo(a[1] + t * (b[1] - a[1]) + rise * crown[1], 9);
    }),
  );
});
