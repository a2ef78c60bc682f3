/** How deep a fusion line or an undercut lies behind the root or the face of a plate. */
import { dot, keptWhere } from './marked-lines.ts';
import type { Outline, Point } from './outline.ts';

/** How far behind the root the curve crosses the line that halves the corner, at its deepest; undefined where it does not cross. */
export function depthBehind(root: Point, bisector: Point, curve: Outline): number | undefined {
  let deepest: number | undefined;
  const [rootX, rootY] = root;
  const [outX, outY] = bisector;
  let [sideBefore, alongBefore] = [Number.NaN, Number.NaN];
  for (const [x, y] of curve) {
    const side = outX * (y - rootY) - outY * (x - rootX);
    const along = outX * (x - rootX) + outY * (y - rootY);
    if (sideBefore !== side && sideBefore * side <= 0) {
      const share = sideBefore / (sideBefore - side);
      const depth = -((1 - share) * alongBefore + share * along);
      deepest = Math.max(deepest ?? depth, depth);
    }
    [sideBefore, alongBefore] = [side, along];
  }
  return deepest;
}

/** How far the deepest of the points lies behind a plate's face, seen from the other plate. */
export function depthBelow(
  root: Point,
  along: Point,
  other: Point,
  points: readonly Point[],
): number {
  const behind = Math.sign(along[0] * other[1] - along[1] * other[0]);
  let deepest = Number.NEGATIVE_INFINITY;
  for (const point of points) {
    const side = along[0] * (point[1] - root[1]) - along[1] * (point[0] - root[0]);
    deepest = Math.max(deepest, -behind * side);
  }
  return deepest;
}

/**
 * The deepest fusion into a plate between the middle of its leg and the toe. The fusion line ends at
 * the toe, so there is always a point to look at; where it passes the middle of the leg, it is cut there.
 */
export function depthBesideToe(
  root: Point,
  along: Point,
  other: Point,
  leg: number,
  fusion: Outline,
) {
  const middle = dot(root, along) + leg / 2;
  const past = (point: Point) => (dot(point, along) - middle) * Math.sign(leg);
  return depthBelow(root, along, other, keptWhere(fusion, past));
}
