/**
 * The lines that a measured section is drawn with, in pixels of the picture: legs, throat, the line
 * between the toes, face and fusion line. Found on the squared-up section and sent back.
 */
import type { SectionMarks } from '../geometry/fillet-section.ts';
import { type Homography, inverse, mapped } from '../geometry/homography.ts';
import type { Point } from '../geometry/outline.ts';
import { distance, smoothCurve } from '../geometry/smooth-curve.ts';

export interface SectionLines {
  chord: readonly Point[];
  throat: readonly Point[];
  face: readonly Point[];
  fusion: readonly Point[];
  deposit: readonly Point[];
  melted: readonly Point[];
}

const flat: Homography = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

export function sectionLines(
  marks: SectionMarks,
  map: Homography = flat,
): SectionLines | undefined {
  const place = (point: Point) => mapped(map, point);
  const [root, toeA, toeB] = [place(marks.root), place(marks.toeA), place(marks.toeB)];
  if (!root || !toeA || !toeB) return undefined;
  const back = inverse(map);
  const inPicture = (points: readonly Point[]) =>
    points.flatMap((point): Point[] => {
      const seen = mapped(back, point);
      return seen ? [seen] : [];
    });
  const curve = (points: readonly Point[]) => {
    if (points.length === 0) return [];
    const placed = points.flatMap((point): Point[] => {
      const there = place(point);
      return there ? [there] : [];
    });
    const [first, last] = [placed[0], placed.at(-1)];
    const turned = first && last && distance(first, toeA) > distance(last, toeA);
    return inPicture(smoothCurve([toeA, ...(turned ? placed.reverse() : placed), toeB]));
  };
  const [face, fusion] = [curve(marks.face), curve(marks.fusion)];
  return {
    chord: inPicture([toeA, toeB]),
    throat: inPicture([root, footOn(root, toeA, toeB)]),
    face,
    fusion,
    deposit: [marks.root, ...(face.length > 0 ? face : [marks.toeA, marks.toeB])],
    melted: fusion.length > 0 ? [marks.root, ...fusion] : [],
  };
}

function footOn([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): Point {
  const [dx, dy] = [bx - ax, by - ay];
  const under = dx * dx + dy * dy;
  if (under === 0) return [ax, ay];
  const share = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / under));
  return [ax + share * dx, ay + share * dy];
}

/**
 * A scale bar in the upper right of the picture, where seldom a ruler lies: the longest of the lengths
 * that fits into a quarter of its width, with its ends in pixels. Lengths in millimeters.
 */
export function scaleBar(
  map: Homography,
  picture: { width: number; height: number },
  lengths: readonly number[],
): { ends: readonly [Point, Point]; length: number } | undefined {
  const start: Point = [0.7 * picture.width, 0.08 * picture.height];
  const [from, to] = [mapped(map, start), mapped(map, [0.95 * picture.width, start[1]])];
  if (!from || !to) return undefined;
  const room = distance(from, to);
  const length = lengths.toSorted((a, b) => b - a).find((one) => one <= room);
  if (length === undefined) return undefined;
  const share = length / room;
  const end = mapped(inverse(map), [
    from[0] + share * (to[0] - from[0]),
    from[1] + share * (to[1] - from[1]),
  ]);
  return end && { ends: [start, end], length };
}
