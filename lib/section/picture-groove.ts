/** A groove's section measured on a picture. */
import { type GrooveReadings, readGroove } from '../geometry/etched-groove.ts';
import type { GrooveMarks } from '../geometry/groove-marks.ts';
import type { Point } from '../geometry/outline.ts';
import type { Measured } from './measured.ts';
import { type MarkLists, measuredOnPicture } from './measured-on-picture.ts';
import type { PicturePlane } from './picture-plane.ts';

export type MeasuredGroove = { [Name in keyof GrooveReadings]: Measured };

type Name = Exclude<keyof GrooveMarks, 'onStrip'>;

/** Undefined when the plane sets no scale, or a mark lies beyond its horizon. */
export function pictureGroove(
  { onStrip, ...marks }: GrooveMarks,
  plane: PicturePlane,
  markingError: number,
): MeasuredGroove | undefined {
  const { toeA, toeB, rootA, rootB, ...lists } = marks;
  const named: MarkLists<Name> = {
    ...lists,
    toeA: [toeA],
    toeB: [toeB],
    rootA: [rootA],
    rootB: [rootB],
  };
  return measuredOnPicture(named, plane, markingError, (placed) =>
    readGroove({
      ...placed,
      toeA: placed.toeA[0] as Point,
      toeB: placed.toeB[0] as Point,
      rootA: placed.rootA[0] as Point,
      rootB: placed.rootB[0] as Point,
      onStrip,
    }),
  );
}
