/** Cubic Bézier curves: their points, and the area that they sweep. */
import type { Point } from './outline.ts';

export type Cubic = readonly [Point, Point, Point, Point];

/** `t` runs from 0 at the first corner to 1 at the last. */
export function bezierPoint([a, b, c, d]: Cubic, t: number): Point {
  const back = 1 - t;
  const at = (axis: 0 | 1) =>
    back ** 3 * a[axis] +
    3 * back ** 2 * t * b[axis] +
    3 * back * t ** 2 * c[axis] +
    t ** 3 * d[axis];
  return [at(0), at(1)];
}

/**
 * Signed area between the curve and the two lines from its ends to the origin: a fixed mix of its
 * corners' cross products. Summed over the curves that go round an outline it is that outline's area.
 */
export function sweptArea(controls: Cubic): number {
  const cross = (i: 0 | 1 | 2 | 3, j: 0 | 1 | 2 | 3) =>
    controls[i][0] * controls[j][1] - controls[i][1] * controls[j][0];
  return (
    (6 * cross(0, 1) +
      3 * cross(0, 2) +
      cross(0, 3) +
      3 * cross(1, 2) +
      3 * cross(1, 3) +
      6 * cross(2, 3)) /
    20
  );
}

/** A straight line as a cubic, and a parabola over the line from a to b with its crown off by `crown`. */
export const bow = (a: Point, b: Point, crown: Point): Cubic => {
  const control = (share: number): Point => [
    a[0] + share * (b[0] - a[0]) + (4 / 3) * crown[0],
    a[1] + share * (b[1] - a[1]) + (4 / 3) * crown[1],
  ];
  return [a, control(1 / 3), control(2 / 3), b];
};
