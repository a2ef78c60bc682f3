/** A fillet's section measured on a picture. */
import { type FilletMarks, readFillet } from '../geometry/etched-fillet.ts';
import type { Point } from '../geometry/outline.ts';
import type { MeasuredFillet } from './measured-fillet.ts';
import { type MarkLists, measuredOnPicture } from './measured-on-picture.ts';
import type { PicturePlane } from './picture-plane.ts';

const lists = ['face', 'fusion', 'plateA', 'plateB', 'undercutA', 'undercutB'] as const;
const singles = ['root', 'toeA', 'toeB'] as const;
type Name = (typeof lists)[number] | (typeof singles)[number];

/** Undefined when the plane sets no scale, or a mark lies beyond its horizon. */
export function pictureFillet(
  marks: FilletMarks,
  plane: PicturePlane,
  markingError: number,
): MeasuredFillet | undefined {
  const named = Object.fromEntries([
    ...singles.map((name) => [name, [marks[name]]]),
    ...lists.map((name) => [name, marks[name] ?? []]),
  ]) as MarkLists<Name>;
  return measuredOnPicture(named, plane, markingError, ({ root, toeA, toeB, ...rest }) =>
    readFillet({
      root: root[0] as Point,
      toeA: toeA[0] as Point,
      toeB: toeB[0] as Point,
      ...rest,
    }),
  );
}
