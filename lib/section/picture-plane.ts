/**
 * How a picture of a section is turned into millimeters: by two points of known distance, or by the
 * four corners of a rectangle of known sides, which squares a tilted picture up as well.
 */
import { type Corners, type Homography, mapped, squaredUp } from '../geometry/homography.ts';
import type { Point } from '../geometry/outline.ts';
import { distance } from '../geometry/smooth-curve.ts';

export type PicturePlane =
  | { by: 'distance'; ends: readonly [Point, Point]; length: number; lengthError: number }
  | { by: 'rectangle'; corners: Corners; width: number; height: number; lengthError: number };

/** From the picture to millimeters on the section; undefined beyond the horizon of a tilted one. */
export type ToPlane = (point: Point) => Point | undefined;

/** Undefined when the points set no scale: they are one, or no rectangle looks like that. */
export function toPlane(plane: PicturePlane): ToPlane | undefined {
  const map = planeMap(plane);
  return map && ((point) => mapped(map, point));
}

/** From pixels of the picture to millimeters; undefined as in `toPlane`. */
export function planeMap(plane: PicturePlane): Homography | undefined {
  if (plane.by === 'rectangle') return squaredUp(plane.corners, plane.width, plane.height);
  const apart = distance(...plane.ends);
  if (apart === 0) return undefined;
  const scale = plane.length / apart;
  return [
    [scale, 0, 0],
    [0, scale, 0],
    [0, 0, 1],
  ];
}

/** The numbers that set the scale, with the standard error of each: points first, lengths after. */
export function planeNumbers(plane: PicturePlane, markingError: number) {
  const points = plane.by === 'distance' ? plane.ends : plane.corners;
  const lengths = plane.by === 'distance' ? [plane.length] : [plane.width, plane.height];
  return {
    values: [...points.flat(), ...lengths],
    errors: [
      ...points.flatMap(() => [markingError, markingError]),
      ...lengths.map(() => plane.lengthError),
    ],
  };
}

/** The plane with those numbers, in the same order. */
export function planeFrom(plane: PicturePlane, values: readonly number[]): PicturePlane {
  const point = (i: number): Point => [values[2 * i] as number, values[2 * i + 1] as number];
  if (plane.by === 'distance')
    return { ...plane, ends: [point(0), point(1)], length: values[4] as number };
  return {
    ...plane,
    corners: [point(0), point(1), point(2), point(3)],
    width: values[8] as number,
    height: values[9] as number,
  };
}
