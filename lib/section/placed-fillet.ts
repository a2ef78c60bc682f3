/** From placed marks of a fillet and a typed scale to readings, or to the sentence that says what is missing. */
import type { FilletMarks } from '../geometry/etched-fillet.ts';
import { distance } from '../geometry/smooth-curve.ts';
import type { MeasuredFillet } from './measured-fillet.ts';
import { pictureFillet } from './picture-fillet.ts';
import type { PicturePlane } from './picture-plane.ts';
import { type Missing, placedPlane, type TypedScale } from './placed-plane.ts';
import { isPlaced, type Placed } from './section-marks.ts';

/** In millimeters: a leg that lies across its plate is nothing but the last bits of a cosine. */
const smallest = 1e-6;

/** The marks of the fillet; undefined until root and toes stand. Curves count from their least number. */
export function filletMarks(placed: Placed): FilletMarks | undefined {
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
export function placedFillet(
  placed: Placed,
  typed: TypedScale,
  markingError: number,
): { found: MeasuredFillet; plane: PicturePlane } | Missing {
  const plane = placedPlane(placed, typed);
  if ('missing' in plane) return plane;
  const marks = filletMarks(placed);
  if (!marks) return { missing: 'Mark the root and both toes.' };
  const { root, toeA, toeB } = marks;
  const closest = Math.min(distance(root, toeA), distance(root, toeB), distance(toeA, toeB));
  if (closest <= 4 * markingError)
    return { missing: 'Root and toes lie too close together in the picture to measure.' };
  const found = pictureFillet(marks, plane, markingError);
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
