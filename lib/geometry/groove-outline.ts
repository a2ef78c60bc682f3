/**
 * The curves and lines of a marked groove. Between the plates the old front face runs straight from
 * one toe to the other, both brought onto the plates' marked faces first; the back likewise.
 */
import type { GrooveMarks } from './groove-marks.ts';
import { inOrder, type Line, mainAxis, middleOf } from './marked-lines.ts';
import type { Outline, Point } from './outline.ts';
import { smoothCurve } from './smooth-curve.ts';

/** Each in the order of its name: from the front, from plate A. */
export interface GrooveOutline {
  /** The old faces of the joint, from plate A to plate B. */
  front: Line;
  back: Line;
  cap: Outline;
  root: Outline;
  fusionA: Outline;
  fusionB: Outline;
  edgeA: Outline;
  edgeB: Outline;
}

/** The marks of a curve may have been set from either end. */
export function grooveOutline(marks: GrooveMarks): GrooveOutline {
  const { toeA, toeB, rootA, rootB } = marks;
  const curve = (from: Point, points: readonly Point[], to: Point) =>
    smoothCurve([from, ...inOrder(points, from, to), to]);
  return {
    front: [onFace(toeA, marks.frontA), onFace(toeB, marks.frontB)],
    back: [onFace(rootA, marks.backA), onFace(rootB, marks.backB)],
    cap: curve(toeA, marks.cap, toeB),
    root: curve(rootA, marks.rootBead, rootB),
    fusionA: curve(toeA, marks.fusionA, rootA),
    fusionB: curve(toeB, marks.fusionB, rootB),
    edgeA: inOrder(marks.edgeA, toeA, rootA),
    edgeB: inOrder(marks.edgeB, toeB, rootB),
  };
}

/** A point brought onto the line of a plate's face; itself where no face is marked. */
function onFace(point: Point, face: readonly Point[]): Point {
  if (face.length < 2) return point;
  const [x, y] = mainAxis(face);
  const [middleX, middleY] = middleOf(face);
  const along = (point[0] - middleX) * x + (point[1] - middleY) * y;
  return [middleX + along * x, middleY + along * y];
}
