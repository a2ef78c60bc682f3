/** Outlines seen from another frame, and the box round them. */
import type { Outline, Point } from './outline.ts';

/** Where the two axes of a frame come to lie in another one. */
export interface Placement {
  x: Point;
  y: Point;
}

/** The outline seen from another frame, its corners counterclockwise again after a mirroring. */
export function placed(outline: Outline, { x: right, y: up }: Placement): Outline {
  const moved = outline.map(
    ([x, y]): Point => [x * right[0] + y * up[0], x * right[1] + y * up[1]],
  );
  const mirrored = right[0] * up[1] - right[1] * up[0] < 0;
  return mirrored ? moved.reverse() : moved;
}

export interface Bounds {
  left: number;
  bottom: number;
  right: number;
  top: number;
}

/** The smallest upright box round all outlines. */
export function boundsOf(outlines: readonly Outline[]): Bounds {
  const bounds = { left: Infinity, bottom: Infinity, right: -Infinity, top: -Infinity };
  for (const [x, y] of outlines.flat()) {
    bounds.left = Math.min(bounds.left, x);
    bounds.right = Math.max(bounds.right, x);
    bounds.bottom = Math.min(bounds.bottom, y);
    bounds.top = Math.max(bounds.top, y);
  }
  return bounds;
}
