/**
 * Areas and overlaps of outlines by two published polygon libraries, to hold our own geometry
 * against.
 */
import { Polygon } from '@flatten-js/core';
import { diff, type Geometry, intersection, type MultiPolygon } from 'martinez-polygon-clipping';
import type { Outline, Point } from '../../../lib/geometry/outline.ts';

const asFlatten = (outline: Outline): Polygon =>
  new Polygon(outline.map(([x, y]): [number, number] => [x, y]));

export const areaOf = (outline: Outline): number => asFlatten(outline).area();

/**
 * The outline drawn in toward its middle by a twenty-thousandth: clipping does not bear edges that
 * nearly coincide, and neighbors share theirs.
 */
function drawnIn(outline: Outline): Outline {
  const middle = [0, 1].map(
    (axis) => outline.reduce((sum, point) => sum + (point[axis] as number), 0) / outline.length,
  ) as unknown as Point;
  const toward = (value: number, aim: number) => value + (aim - value) * 5e-5;
  return outline.map(([x, y]): Point => [toward(x, middle[0]), toward(y, middle[1])]);
}

const asMartinez = (outline: Outline): MultiPolygon => [
  [[...outline, outline[0] as Point].map(([x, y]): [number, number] => [x, y])],
];

/** Pieces of a clipping result; holes do not occur between outlines without any. */
const areaOfPieces = (pieces: Geometry | null): number =>
  ((pieces ?? []) as MultiPolygon).reduce(
    (sum, [ring]) => sum + (ring ? areaOf(ring.slice(0, -1)) : 0),
    0,
  );

export const areaShared = (a: Outline, b: Outline): number =>
  areaOfPieces(intersection(asMartinez(drawnIn(a)), asMartinez(drawnIn(b))));

export const areaOutside = (part: Outline, whole: Outline): number =>
  areaOfPieces(diff(asMartinez(drawnIn(part)), asMartinez(whole)));
