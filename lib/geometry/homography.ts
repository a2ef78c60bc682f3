/**
 * Squaring up: where points of a tilted picture of a flat thing lie on that thing, from the four
 * corners of a rectangle on it. The map takes straight lines to straight lines (a homography); its
 * closed form from the unit square is that of P. Heckbert, Fundamentals of Texture Mapping and Image
 * Warping, 1989 (from memory).
 */
import type { Point } from './outline.ts';

/** Rows of a 3 × 3 matrix that acts on (x, y, 1). */
export type Homography = readonly [
  readonly [number, number, number],
  readonly [number, number, number],
  readonly [number, number, number],
];

export type Corners = readonly [Point, Point, Point, Point];

/** The point's image; undefined where it lies on or beyond the horizon. */
export function mapped([a, b, c]: Homography, [x, y]: Point): Point | undefined {
  const depth = c[0] * x + c[1] * y + c[2];
  if (!(depth > 0)) return undefined;
  return [(a[0] * x + a[1] * y + a[2]) / depth, (b[0] * x + b[1] * y + b[2]) / depth];
}

/**
 * From the picture to a rectangle of this width (first corner to second) and height, its first
 * corner at the origin. The corners go round, either way. Undefined when they make no four-sided
 * figure that a rectangle can look like: three in a line, or one inside the others.
 */
export function squaredUp(corners: Corners, width: number, height: number): Homography | undefined {
  if (!isConvex(corners)) return undefined;
  const back = inverse(fromUnitSquare(corners));
  const [middleX, middleY] = [0, 1].map(
    (axis) => corners.reduce((sum, corner) => sum + (corner[axis] as number), 0) / 4,
  ) as [number, number];
  const [gx, gy, g1] = back[2];
  const sign = Math.sign(gx * middleX + gy * middleY + g1);
  const row = ([a, b, c]: readonly [number, number, number], factor: number) =>
    [a * factor, b * factor, c * factor] as const;
  return [row(back[0], sign * width), row(back[1], sign * height), row(back[2], sign)];
}

/** The map back. It sends what lies before the horizon to what lies before it. */
export function inverse([[a, b, c], [d, e, f], [g, h, i]]: Homography): Homography {
  const determinant = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  const over = (value: number) => value / determinant;
  return [
    [over(e * i - f * h), over(c * h - b * i), over(b * f - c * e)],
    [over(f * g - d * i), over(a * i - c * g), over(c * d - a * f)],
    [over(d * h - e * g), over(b * g - a * h), over(a * e - b * d)],
  ];
}

function fromUnitSquare([[x0, y0], [x1, y1], [x2, y2], [x3, y3]]: Corners): Homography {
  const [sumX, sumY] = [x0 - x1 + x2 - x3, y0 - y1 + y2 - y3];
  const [dx1, dx2, dy1, dy2] = [x1 - x2, x3 - x2, y1 - y2, y3 - y2];
  const under = dx1 * dy2 - dx2 * dy1;
  const g = (sumX * dy2 - dx2 * sumY) / under;
  const h = (dx1 * sumY - sumX * dy1) / under;
  return [
    [x1 - x0 + g * x1, x3 - x0 + h * x3, x0],
    [y1 - y0 + g * y1, y3 - y0 + h * y3, y0],
    [g, h, 1],
  ];
}

/** Going round, every turn is to the same side. */
function isConvex(corners: Corners): boolean {
  const turns = corners.map((corner, i) => {
    const [before, after] = [corners[(i + 3) % 4], corners[(i + 1) % 4]] as [Point, Point];
    const [ax, ay] = [corner[0] - before[0], corner[1] - before[1]];
    const [bx, by] = [after[0] - corner[0], after[1] - corner[1]];
    const lengths = Math.hypot(ax, ay) * Math.hypot(bx, by);
    // Of two corners in one place: no number, and so no turn to either side.
    return (ax * by - ay * bx) / lengths;
  });
  const leastTurn = 1e-3;
  return turns.every((turn) => turn > leastTurn) || turns.every((turn) => turn < -leastTurn);
}
