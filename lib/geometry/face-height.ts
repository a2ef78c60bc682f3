/** Heights over a face of the joint, seen from inside it, and a curve cut off level with the face. */
import { type Line, mainAxis, middleOf, minus, straight, unit } from './marked-lines.ts';
import type { Outline, Point } from './outline.ts';

/** How far a point lies beyond a face of the joint; below 0 on the side of the point `inside` it. */
export function heightOver([a, b]: Line, inside: Point): (point: Point) => number {
  const { sideOf } = straight(a, b);
  const out = sideOf(inside) > 0 ? -1 : 1;
  return (point) => out * sideOf(point);
}

/** The same over a plate's own face where at least two points of it are marked, else over `instead`. */
export function heightOverPlate(
  face: readonly Point[],
  instead: Line,
  inside: Point,
): (point: Point) => number {
  if (face.length < 2) return heightOver(instead, inside);
  const [x, y] = mainAxis(face);
  const on = middleOf(face);
  return heightOver([on, [on[0] + x, on[1] + y]], inside);
}

/** A curve with everything beyond a face of the joint brought back onto it. */
export function cutLevel(curve: Outline, face: Line, inside: Point): Outline {
  const [a, b] = face;
  const [x, y] = unit(minus(b, a));
  const heightOf = heightOver(face, inside);
  const out = straight(a, b).sideOf(inside) > 0 ? -1 : 1;
  return curve.map((point) => {
    const over = Math.max(0, heightOf(point));
    return [point[0] + over * out * y, point[1] - over * out * x];
  });
}
