/**
 * The lines that a measured fillet is drawn with: legs, throat, the line between the toes, face and
 * fusion line. Found on the squared-up section and sent back to the picture.
 */
import type { FilletMarks } from '../geometry/etched-fillet.ts';
import { type Homography, inverse, mapped } from '../geometry/homography.ts';
import { inOrder } from '../geometry/marked-lines.ts';
import type { Point } from '../geometry/outline.ts';
import { smoothCurve } from '../geometry/smooth-curve.ts';
import { type DrawnSection, flat, footOn } from './drawn-section.ts';

export interface FilletLines {
  chord: readonly Point[];
  throat: readonly Point[];
  face: readonly Point[];
  fusion: readonly Point[];
  deposit: readonly Point[];
  melted: readonly Point[];
}

/**
 * @param map from the picture to the section; left out where the picture is the section
 * @returns lines in pixels of the picture; undefined where root or toes lie beyond the horizon of a
 * tilted one
 */
export function filletLines(marks: FilletMarks, map: Homography = flat): FilletLines | undefined {
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
    const placed = points.flatMap((point): Point[] => {
      const there = place(point);
      return there ? [there] : [];
    });
    if (placed.length === 0) return [];
    return inPicture(smoothCurve([toeA, ...inOrder(placed, toeA, toeB), toeB]));
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

/** The same as areas, lines and labels over the picture. */
export function drawnFillet({
  chord,
  throat,
  face,
  fusion,
  deposit,
  melted,
}: FilletLines): DrawnSection {
  const [root, toeA, toeB] = [deposit[0], chord[0], chord[1]] as [Point, Point, Point];
  return {
    areas: [
      { of: 'deposit', points: deposit },
      ...(melted.length > 0 ? [{ of: 'melted' as const, points: melted }] : []),
    ],
    lines: [
      { as: 'plate', points: [toeA, root, toeB] },
      { as: 'chord', points: chord },
      { as: 'throat', points: throat },
      { as: 'face', points: face },
      { as: 'fusion', points: fusion },
    ],
    labels: [
      { text: 'A', reading: 'legA', between: [root, toeA], awayFrom: toeB },
      { text: 'B', reading: 'legB', between: [root, toeB], awayFrom: toeA },
      { text: 'throat', reading: 'throat', between: throat as [Point, Point] },
    ],
  };
}
