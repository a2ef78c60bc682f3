/** Outlines cut off at the edges of a window. */
import type { Bounds, Point } from './scale.ts';

type Side = readonly [axis: 0 | 1, at: number, sign: 1 | -1];

const sidesOf = ({ left, right, bottom, top }: Bounds): Side[] => [
  [0, left, 1],
  [0, right, -1],
  [1, bottom, 1],
  [1, top, -1],
];

/** What of an outline lies inside the window (Sutherland and Hodgman). */
export function clipped(outline: readonly Point[], window: Bounds): Point[] {
  let kept = [...outline];
  for (const [axis, at, sign] of sidesOf(window)) {
    const inside = (point: Point) => sign * (point[axis] - at) >= 0;
    kept = kept.flatMap((point, index) => {
      const next = kept[(index + 1) % kept.length] as Point;
      const own = inside(point) ? [point] : [];
      if (inside(point) === inside(next)) return own;
      const share = (at - point[axis]) / (next[axis] - point[axis]);
      const cut: Point = [
        axis === 0 ? at : point[0] + share * (next[0] - point[0]),
        axis === 1 ? at : point[1] + share * (next[1] - point[1]),
      ];
      return [...own, cut];
    });
  }
  return kept;
}

/** The edges of a clipped outline that are its own: lines where the window cut it off stay open. */
export function ownEdges(outline: readonly Point[], window: Bounds): [Point, Point][] {
  const onSide = (a: Point, b: Point) =>
    sidesOf(window).some(
      ([axis, at]) => Math.abs(a[axis] - at) < 1e-6 && Math.abs(b[axis] - at) < 1e-6,
    );
  return outline.flatMap((point, index) => {
    const next = outline[(index + 1) % outline.length] as Point;
    return onSide(point, next) ? [] : [[point, next] as [Point, Point]];
  });
}
