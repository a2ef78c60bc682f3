/** From placed marks of a groove and a typed scale to readings, or to the sentence that says what is missing. */
import type { GrooveMarks } from '../geometry/groove-marks.ts';
import { dot, minus } from '../geometry/marked-lines.ts';
import { distance } from '../geometry/smooth-curve.ts';
import { type MeasuredGroove, pictureGroove } from './picture-groove.ts';
import type { PicturePlane } from './picture-plane.ts';
import { type Missing, placedPlane, type TypedScale } from './placed-plane.ts';
import { isPlaced, type MarkName, type Placed } from './section-marks.ts';

/** Undefined until both toes and both ends of fusion stand. Curves count from their least number. */
export function grooveMarks(placed: Placed, onStrip: boolean): GrooveMarks | undefined {
  const [toeA, toeB, rootA, rootB] = [
    placed.toeA[0],
    placed.toeB[0],
    placed.rootA[0],
    placed.rootB[0],
  ];
  if (!toeA || !toeB || !rootA || !rootB) return undefined;
  const enough = (name: MarkName) => (isPlaced(placed, name) ? placed[name] : []);
  return {
    toeA,
    toeB,
    rootA,
    rootB,
    cap: enough('face'),
    rootBead: enough('rootBead'),
    fusionA: enough('fusionA'),
    fusionB: enough('fusionB'),
    edgeA: enough('edgeA'),
    edgeB: enough('edgeB'),
    frontA: enough('plateA'),
    frontB: enough('plateB'),
    backA: enough('backA'),
    backB: enough('backB'),
    undercutA: enough('undercutA'),
    undercutB: enough('undercutB'),
    onStrip,
  };
}

/**
 * @param markingError standard error of each coordinate of a mark, in pixels of the picture
 * @param onStrip whether the root lies in a backing strip
 */
export function placedGroove(
  placed: Placed,
  typed: TypedScale,
  markingError: number,
  onStrip: boolean,
): { found: MeasuredGroove; plane: PicturePlane } | Missing {
  const plane = placedPlane(placed, typed);
  if ('missing' in plane) return plane;
  const marks = grooveMarks(placed, onStrip);
  if (!marks)
    return { missing: 'Mark both toes of the cap, and where the fusion ends on both plates.' };
  const { toeA, toeB, rootA, rootB } = marks;
  const closest = Math.min(distance(toeA, toeB), distance(toeA, rootA), distance(toeB, rootB));
  if (closest <= 4 * markingError)
    return { missing: 'The toes and the root lie too close together in the picture to measure.' };
  if (dot(minus(toeB, toeA), minus(rootB, rootA)) < 0)
    return {
      missing:
        'Plates A and B have changed sides at the root: A is the same plate above and below.',
    };
  const found = pictureGroove(marks, plane, markingError);
  if (!found) return { missing: 'A mark lies where the squared-up picture has no place for it.' };
  if (found.weldArea && found.weldArea.value <= 0)
    return { missing: 'These marks make no weld: look at the cap and the edges of fusion again.' };
  return { found, plane };
}
