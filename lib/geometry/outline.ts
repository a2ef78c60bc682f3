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
