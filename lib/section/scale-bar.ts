import { type Homography, inverse, mapped } from '../geometry/homography.ts';
import type { Point } from '../geometry/outline.ts';
import { distance } from '../geometry/smooth-curve.ts';

/**
 * A scale bar in the upper right of the picture, where seldom a ruler lies: the longest of the lengths
 * that fits into a quarter of its width, with its ends in pixels. Lengths in millimeters.
 */
export function scaleBar(
  map: Homography,
  picture: { width: number; height: number },
  lengths: readonly number[],
): { ends: readonly [Point, Point]; length: number } | undefined {
  const start: Point = [0.7 * picture.width, 0.08 * picture.height];
  const [from, to] = [mapped(map, start), mapped(map, [0.95 * picture.width, start[1]])];
  if (!from || !to) return undefined;
  const room = distance(from, to);
  const length = lengths.toSorted((a, b) => b - a).find((one) => one <= room);
  if (length === undefined) return undefined;
  const share = length / room;
  const end = mapped(inverse(map), [
    from[0] + share * (to[0] - from[0]),
    from[1] + share * (to[1] - from[1]),
  ]);
  return end && { ends: [start, end], length };
}
