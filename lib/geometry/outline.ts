/** Closed outlines in the plane: a list of corners, the first not repeated at the end. */
export type Point = readonly [x: number, y: number];
export type Outline = readonly Point[];

/** Twice-signed halves of the shoelace formula: positive when the corners run counterclockwise. */
export function signedArea(outline: Outline): number {
  let sum = 0;
  let before = outline.at(-1) ?? ([0, 0] as const);
  for (let i = 0; i < outline.length; i++) {
    const corner = outline[i] as Point;
    sum += before[0] * corner[1] - corner[0] * before[1];
    before = corner;
  }
  return sum / 2;
}

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
