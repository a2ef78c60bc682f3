/** The plane of a picture from its placed points and the typed lengths, or the sentence that says what is missing. */
import type { Corners } from '../geometry/homography.ts';
import type { Point } from '../geometry/outline.ts';
import { type PicturePlane, toPlane } from './picture-plane.ts';
import { isPlaced, type Placed } from './section-marks.ts';

/** Lengths in millimeters; undefined while they cannot be read. */
export interface TypedScale {
  by: PicturePlane['by'];
  length: number | undefined;
  width: number | undefined;
  height: number | undefined;
  /** The most that those lengths may be off: two standard errors. */
  lengthError: number | undefined;
}

export type Missing = { missing: string };

/** The plane of the picture, from its points and the typed lengths. */
export function placedPlane(placed: Placed, typed: TypedScale): PicturePlane | Missing {
  const { by, length, width, height, lengthError } = typed;
  if (lengthError === undefined) return { missing: 'Type how far the known length may be off.' };
  const error = lengthError / 2;
  if (by === 'distance') {
    if (!isPlaced(placed, 'ends')) return { missing: 'Mark two points of known distance.' };
    if (length === undefined) return { missing: 'Type the distance between the two points.' };
    const ends = placed.ends as unknown as [Point, Point];
    const plane: PicturePlane = { by, ends, length, lengthError: error };
    return toPlane(plane) ? plane : { missing: 'The two points of known distance are one.' };
  }
  if (!isPlaced(placed, 'corners'))
    return { missing: 'Mark the four corners of the rectangle, going round.' };
  if (width === undefined || height === undefined)
    return { missing: 'Type both sides of the rectangle.' };
  const corners = placed.corners as unknown as Corners;
  const plane: PicturePlane = { by, corners, width, height, lengthError: error };
  return toPlane(plane)
    ? plane
    : {
        missing:
          'No rectangle looks like these four corners: mark them one after the other, going round.',
      };
}
