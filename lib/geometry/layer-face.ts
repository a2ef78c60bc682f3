/**
 * The face of a layer in section, in the layer's own frame: x from toe to toe with its middle at 0,
 * y out of the joint. The face is a parabola that rises by `crown` between its toes.
 */
import type { Point } from './outline.ts';

export interface LayerFace {
  /** From the middle to a toe. */
  halfWidth: number;
  /** Of the toes above the root. */
  height: number;
  crown: number;
}

/** Height of the face at x, from the line between its toes up. */
export const faceHeight = ({ halfWidth, height, crown }: LayerFace, x: number): number =>
  halfWidth === 0 ? height : height + crown * (1 - (x / halfWidth) ** 2);

/** Area between the face and y = 0, from the first toe to x. */
export function areaUnder({ halfWidth, height, crown }: LayerFace, x: number): number {
  if (halfWidth === 0) return 0;
  const along = x / halfWidth;
  return halfWidth * ((height + crown) * (along + 1) - (crown * (along ** 3 + 1)) / 3);
}

/** Chords across a whole face: the drawn area stays within a thousandth of the crown's. */
const chords = 32;

/** The face from one x to a later one, as corners of chords. */
export function facePoints(face: LayerFace, from: number, to: number): Point[] {
  const at = (x: number): Point => [x, faceHeight(face, x)];
  const between: Point[] = [];
  if (face.crown !== 0)
    for (let i = 1; i < chords; i++) {
      const x = face.halfWidth * ((2 * i) / chords - 1);
      if (x > from && x < to) between.push(at(x));
    }
  return from === to ? [at(from)] : [at(from), ...between, at(to)];
}
