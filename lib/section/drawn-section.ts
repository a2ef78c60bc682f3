/** What is drawn over the picture of a section, in pixels of that picture. */
import { type Homography, inverse, mapped } from '../geometry/homography.ts';
import type { Point } from '../geometry/outline.ts';

export type LineKind = 'plate' | 'chord' | 'throat' | 'face' | 'fusion';

export interface DrawnLabel {
  /** A word before the reading's value. */
  text: string;
  /** The name of the reading whose value stands here. */
  reading: string;
  /** In the middle between these, */
  between: readonly [Point, Point];
  /** off the line to the side that is away from this point; on the line where there is none. */
  awayFrom?: Point;
}

export interface DrawnSection {
  areas: readonly { of: 'deposit' | 'melted'; points: readonly Point[] }[];
  lines: readonly { as: LineKind; points: readonly Point[] }[];
  labels: readonly DrawnLabel[];
}

/** The same drawing where each point lies elsewhere; undefined where one has no place there. */
export function movedDrawing(
  { areas, lines, labels }: DrawnSection,
  map: Homography,
): DrawnSection | undefined {
  let lost = false;
  const place = (point: Point): Point => {
    const there = mapped(map, point);
    lost ||= !there;
    return there ?? point;
  };
  const moved: DrawnSection = {
    areas: areas.map(({ of, points }) => ({ of, points: points.map(place) })),
    lines: lines.map(({ as, points }) => ({ as, points: points.map(place) })),
    labels: labels.map(({ between: [from, to], awayFrom, ...label }) => ({
      ...label,
      between: [place(from), place(to)],
      ...(awayFrom && { awayFrom: place(awayFrom) }),
    })),
  };
  return lost ? undefined : moved;
}

/** A drawing made on the squared-up section, back in the picture. */
export const inPicture = (drawing: DrawnSection, map: Homography): DrawnSection | undefined =>
  movedDrawing(drawing, inverse(map));

/** Where a perpendicular from a point meets the line from a to b, or the nearer end. */
export function footOn([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): Point {
  const [dx, dy] = [bx - ax, by - ay];
  const under = dx * dx + dy * dy;
  if (under === 0) return [ax, ay];
  const share = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / under));
  return [ax + share * dx, ay + share * dy];
}

/** The map of a picture that needs no squaring up. */
export const flat: Homography = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
