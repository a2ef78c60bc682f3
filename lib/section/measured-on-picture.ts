/**
 * Readings in millimeters from marks on a picture, each with the uncertainty that comes from every
 * mark, from the points that set the scale and from the length they are said to have.
 */
import type { Point } from '../geometry/outline.ts';
import { propagated } from '../geometry/propagated.ts';
import { coverage, type Measured } from './measured.ts';
import { type PicturePlane, planeFrom, planeNumbers, toPlane } from './picture-plane.ts';

/** Marks by kind, in pixels of the picture. */
export type MarkLists<Name extends string> = Readonly<Record<Name, readonly Point[]>>;

/**
 * @param read readings of the marks in millimeters on the section
 * @returns undefined when the plane sets no scale, or a mark lies beyond its horizon
 */
export function measuredOnPicture<Name extends string, Readings extends object>(
  marks: MarkLists<Name>,
  plane: PicturePlane,
  markingError: number,
  read: (marks: MarkLists<Name>) => Readings,
): { [Reading in keyof Readings]: Measured } | undefined {
  const scale = planeNumbers(plane, markingError);
  const first = scale.values.length;
  const lists = Object.entries<readonly Point[]>(marks);
  const points = lists.flatMap(([, list]) => list);
  const readAt = (values: readonly number[]): Readings | undefined => {
    const place = toPlane(planeFrom(plane, values.slice(0, first)));
    if (!place) return undefined;
    let next = first;
    const placed: [string, Point[]][] = [];
    for (const [name, list] of lists) {
      const there: Point[] = [];
      for (let i = 0; i < list.length; i++, next += 2) {
        const point = place([values[next] as number, values[next + 1] as number]);
        if (!point) return undefined;
        there.push(point);
      }
      placed.push([name, there]);
    }
    return read(Object.fromEntries(placed) as unknown as MarkLists<Name>);
  };
  const values = [...scale.values, ...points.flat()];
  const readings = readAt(values);
  if (!readings) return undefined;
  const errors = [...scale.errors, ...points.flatMap(() => [markingError, markingError])];
  const moves = propagated(
    (moved) => readAt(moved) as Record<string, number | undefined> | undefined,
    values,
    errors,
  );
  return Object.fromEntries(
    Object.entries(readings).map(([name, value]) => [
      name,
      { value, uncertainty: coverage * (moves[name] ?? 0) },
    ]),
  ) as { [Reading in keyof Readings]: Measured };
}
