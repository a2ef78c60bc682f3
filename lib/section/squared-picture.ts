/**
 * A tilted picture redrawn as if it had been taken straight from above: which part of the plane is
 * shown, and how large. `warped-pixels.ts` redraws the pixels.
 */
import { type Homography, inverse, mapped } from '../geometry/homography.ts';
import type { Point } from '../geometry/outline.ts';

export interface Size {
  width: number;
  height: number;
}

export interface SquaredFrame extends Size {
  /** From the tilted picture to the squared one, both in pixels. */
  view: Homography;
  /** Pixels of the squared picture for a millimeter, in every direction. */
  perMillimeter: number;
}

/** How far beyond the rectangle the redrawn picture may reach, in sides of the square that is as large. */
const beyond = 1.2;

/**
 * @param map from the picture to millimeters, the rectangle's first corner at the origin
 * @param longest most pixels along a side of the redrawn picture
 */
export function squaredFrame(
  map: Homography,
  picture: Size,
  rectangle: Size,
  longest: number,
): SquaredFrame | undefined {
  const turned = product(upright(map, rectangle), map);
  const corners = ([x, y]: Point, [u, v]: Point): Point[] => [
    [x, y],
    [u, y],
    [u, v],
    [x, v],
  ];
  const sides = corners([0, 0], [rectangle.width, rectangle.height]).map(
    (corner) => mapped(turned, mapped(inverse(map), corner) ?? [0, 0]) ?? [0, 0],
  );
  const whole = corners([0, 0], [picture.width, picture.height]).map((corner) =>
    mapped(turned, corner),
  );
  const reach = beyond * Math.sqrt(rectangle.width * rectangle.height);
  const limits = [0, 1].map((axis) => {
    const own = sides.map((side) => side[axis as 0 | 1]);
    const [low, high] = [Math.min(...own), Math.max(...own)];
    // A corner beyond the horizon lies farther off than anything that is shown.
    const seen = whole.map((corner) => corner?.[axis as 0 | 1]);
    const known = seen.filter((one) => one !== undefined);
    return known.length < seen.length
      ? [low - reach, high + reach]
      : [Math.max(low - reach, Math.min(...known)), Math.min(high + reach, Math.max(...known))];
  }) as [[number, number], [number, number]];
  const [[left, right], [top, bottom]] = limits;
  const [across, down] = [right - left, bottom - top];
  if (!(across > 0 && down > 0)) return undefined;
  const perMillimeter = Math.min(longest / Math.max(across, down), sharpness(map, rectangle));
  const view = product(
    [
      [perMillimeter, 0, -left * perMillimeter],
      [0, perMillimeter, -top * perMillimeter],
      [0, 0, 1],
    ],
    turned,
  );
  return {
    view,
    perMillimeter,
    width: Math.max(1, Math.round(across * perMillimeter)),
    height: Math.max(1, Math.round(down * perMillimeter)),
  };
}

/** Pixels for a millimeter that the picture itself has, on the average over the rectangle. */
function sharpness(map: Homography, { width, height }: Size): number {
  const back = inverse(map);
  const at = (point: Point) => mapped(back, point) ?? [0, 0];
  const [[ax, ay], [bx, by], [cx, cy], [dx, dy]] = [
    at([0, 0]),
    at([width, 0]),
    at([width, height]),
    at([0, height]),
  ] as [Point, Point, Point, Point];
  const pixels = Math.abs((cx - ax) * (dy - by) - (cy - ay) * (dx - bx)) / 2;
  return Math.sqrt(pixels / (width * height));
}

/** The turn by quarters, mirrored if need be, after which right in the picture is right again. */
function upright(map: Homography, { width, height }: Size): Homography {
  const back = inverse(map);
  const middle = mapped(back, [width / 2, height / 2]) ?? [0, 0];
  const at = (x: number, y: number) => mapped(map, [middle[0] + x, middle[1] + y]) ?? [0, 0];
  const here = at(0, 0);
  const right = at(1, 0).map((value, axis) => value - (here[axis as 0 | 1] as number));
  const down = at(0, 1).map((value, axis) => value - (here[axis as 0 | 1] as number));
  const sign = (value: number | undefined) => (Number(value) < 0 ? -1 : 1);
  if (Math.abs(Number(right[0])) >= Math.abs(Number(right[1])))
    return [
      [sign(right[0]), 0, 0],
      [0, sign(down[1]), 0],
      [0, 0, 1],
    ];
  return [
    [0, sign(right[1]), 0],
    [sign(down[0]), 0, 0],
    [0, 0, 1],
  ];
}

/** First `second`, then `first`. */
export function product(first: Homography, second: Homography): Homography {
  return first.map((row) =>
    [0, 1, 2].map((column) =>
      row.reduce((sum, value, i) => sum + value * Number(second[i]?.[column]), 0),
    ),
  ) as unknown as Homography;
}
