/** From placed marks and a typed scale to readings, or to the sentence that says what is missing. */

import type { SectionMarks } from '../geometry/fillet-section.ts';
import type { Corners } from '../geometry/homography.ts';
import type { Point } from '../geometry/outline.ts';
import { distance } from '../geometry/smooth-curve.ts';
import type { MeasuredSection } from './measured-section.ts';
import { type PicturePlane, toPlane } from './picture-plane.ts';
import { pictureSection } from './picture-section.ts';
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

/** In millimeters: a leg that lies across its plate is nothing but the last bits of a cosine. */
const smallest = 1e-6;

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

/** The marks of the fillet; undefined until root and toes stand. Curves count from their least number. */
export function filletMarks(placed: Placed): SectionMarks | undefined {
  const { root, toeA, toeB } = placed;
  if (!root[0] || !toeA[0] || !toeB[0]) return undefined;
  const enough = (name: 'face' | 'fusion' | 'plateA' | 'plateB' | 'undercutA' | 'undercutB') =>
    isPlaced(placed, name) ? placed[name] : [];
  return {
    root: root[0],
    toeA: toeA[0],
    toeB: toeB[0],
    face: enough('face'),
    fusion: enough('fusion'),
    plateA: enough('plateA'),
    plateB: enough('plateB'),
    undercutA: enough('undercutA'),
    undercutB: enough('undercutB'),
  };
}

/**
 * @param markingError standard error of each coordinate of a mark, in pixels of the picture
 */
export function placedSection(
  placed: Placed,
  typed: TypedScale,
  markingError: number,
): { found: MeasuredSection; plane: PicturePlane } | Missing {
  const plane = placedPlane(placed, typed);
  if ('missing' in plane) return plane;
  const marks = filletMarks(placed);
  if (!marks) return { missing: 'Mark the root and both toes.' };
  const { root, toeA, toeB } = marks;
  const closest = Math.min(distance(root, toeA), distance(root, toeB), distance(toeA, toeB));
  if (closest <= 4 * markingError)
    return { missing: 'Root and toes lie too close together in the picture to measure.' };
  const found = pictureSection(marks, plane, markingError);
  if (!found) return { missing: 'A mark lies where the squared-up picture has no place for it.' };
  if (found.angle.value < 20 || found.angle.value > 170)
    return {
      missing: 'The plates must meet at 20° to 170°: look at root, toes and plate faces again.',
    };
  if (Math.min(found.legA.value, found.legB.value, found.throat.value) < smallest)
    return { missing: 'These marks make no fillet: look at the toes and the face again.' };
  if (marks.fusion.length > 0 && !found.penetration)
    return { missing: 'The fusion line does not pass the root: mark it from toe to toe.' };
  return { found, plane };
}
