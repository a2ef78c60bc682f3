/**
 * Readings of a section in millimeters from marks on a picture, each with the uncertainty that comes
 * from every mark, from the points that set the scale and from the length they are said to have.
 */
import {
  readSection,
  type SectionMarks,
  type SectionReadings,
} from '../geometry/fillet-section.ts';
import type { Point } from '../geometry/outline.ts';
import { propagated } from '../geometry/propagated.ts';
import { coverage, type MeasuredSection } from './measured-section.ts';
import { type PicturePlane, planeFrom, planeNumbers, toPlane } from './picture-plane.ts';

const lists = ['face', 'fusion', 'plateA', 'plateB', 'undercutA', 'undercutB'] as const;
const singles = ['root', 'toeA', 'toeB'] as const;

/** Undefined when the plane sets no scale, or a mark lies beyond its horizon. */
export function pictureSection(
  marks: SectionMarks,
  plane: PicturePlane,
  markingError: number,
): MeasuredSection | undefined {
  const points = pointsOf(marks);
  const scale = planeNumbers(plane, markingError);
  const read = (values: readonly number[]): SectionReadings | undefined => {
    const place = toPlane(planeFrom(plane, values.slice(0, scale.values.length)));
    if (!place) return undefined;
    const placed: Point[] = [];
    for (let i = scale.values.length; i < values.length; i += 2) {
      const point = place([values[i] as number, values[i + 1] as number]);
      if (!point) return undefined;
      placed.push(point);
    }
    return readSection(marksFrom(marks, placed));
  };
  const values = [...scale.values, ...points.flat()];
  const readings = read(values);
  if (!readings) return undefined;
  const errors = [...scale.errors, ...points.flatMap(() => [markingError, markingError])];
  const moves = propagated(
    (moved) => read(moved) as Record<string, number | undefined> | undefined,
    values,
    errors,
  );
  return Object.fromEntries(
    Object.entries(readings).map(([name, value]) => [
      name,
      { value, uncertainty: coverage * (moves[name] ?? 0) },
    ]),
  ) as MeasuredSection;
}

const pointsOf = (marks: SectionMarks): Point[] => [
  ...singles.map((name) => marks[name]),
  ...lists.flatMap((name) => marks[name] ?? []),
];

function marksFrom(like: SectionMarks, points: readonly Point[]): SectionMarks {
  let next = 0;
  const take = (count: number) => {
    next += count;
    return points.slice(next - count, next);
  };
  const [root, toeA, toeB] = take(3) as [Point, Point, Point];
  const rest = Object.fromEntries(lists.map((name) => [name, take(like[name]?.length ?? 0)]));
  return { root, toeA, toeB, ...rest } as unknown as SectionMarks;
}

/** The same marks in millimeters on the section, for drawing; undefined as above. */
export function marksInPlane(marks: SectionMarks, plane: PicturePlane): SectionMarks | undefined {
  const place = toPlane(plane);
  const placed = place && pointsOf(marks).map(place);
  return placed?.every((point) => point !== undefined)
    ? marksFrom(marks, placed as Point[])
    : undefined;
}
