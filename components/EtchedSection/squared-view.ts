/** The picture as it is shown: as it was taken, or squared up, with marks and lines where they lie there. */
import { type Homography, inverse, mapped } from '../../lib/geometry/homography.ts';
import type { Point } from '../../lib/geometry/outline.ts';
import { type DrawnSection, movedDrawing } from '../../lib/section/drawn-section.ts';
import type { PicturePlane } from '../../lib/section/picture-plane.ts';
import type { Placed } from '../../lib/section/section-marks.ts';
import type { Picture } from './picture.ts';
import type { Squared } from './square-picture.ts';

export interface Shown {
  picture: Picture;
  placed: Placed;
  drawn: DrawnSection | undefined;
  /** From the shown picture to millimeters. */
  map: Homography | undefined;
  /** A point of the shown picture in the picture as it was taken. */
  back(point: Point): Point;
}

/** A mark that the squared-up picture has no place for stands far outside it. */
const nowhere: Point = [-1e6, -1e6];

export function shown(
  picture: Picture,
  placed: Placed,
  drawn: DrawnSection | undefined,
  map: Homography | undefined,
  squared: Squared | undefined,
): Shown {
  if (!squared) return { picture, placed, drawn, map, back: (point) => point };
  const { view, perMillimeter } = squared.frame;
  const home = inverse(view);
  return {
    picture: squared.picture,
    placed: Object.fromEntries(
      Object.entries(placed).map(([name, points]) => [
        name,
        points.map((point) => mapped(view, point) ?? nowhere),
      ]),
    ) as unknown as Placed,
    drawn: drawn && movedDrawing(drawn, view),
    map: [
      [1 / perMillimeter, 0, 0],
      [0, 1 / perMillimeter, 0],
      [0, 0, 1],
    ],
    back: (point) => mapped(home, point) ?? point,
  };
}

/** What a squared-up picture depends on, to tell whether the one at hand is still right. */
export const squaredKey = (plane: PicturePlane): string | undefined =>
  plane.by === 'rectangle' ? JSON.stringify([plane.corners, plane.width, plane.height]) : undefined;
