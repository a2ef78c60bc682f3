/**
 * The lines that a measured fillet is drawn with: legs, throat, the line between the toes, face and
 * fusion line. Found on the squared-up section and sent back to the picture.
 */
import type { SectionMarks } from '../geometry/fillet-section.ts';
import { type Homography, mapped } from '../geometry/homography.ts';
import { inOrder } from '../geometry/marked-lines.ts';
import type { Point } from '../geometry/outline.ts';
import { smoothCurve } from '../geometry/smooth-curve.ts';
import { type DrawnSection, flat, footOn, inPicture } from './drawn-section.ts';

export function sectionLines(
  marks: SectionMarks,
  map: Homography = flat,
): DrawnSection | undefined {
  const place = (point: Point) => mapped(map, point);
  const [root, toeA, toeB] = [place(marks.root), place(marks.toeA), place(marks.toeB)];
  if (!root || !toeA || !toeB) return undefined;
  const curve = (points: readonly Point[]) => {
    const placed = points.flatMap((point): Point[] => {
      const there = place(point);
      return there ? [there] : [];
    });
    return placed.length === 0 ? [] : smoothCurve([toeA, ...inOrder(placed, toeA, toeB), toeB]);
  };
  const [face, fusion] = [curve(marks.face), curve(marks.fusion)];
  const throat: [Point, Point] = [root, footOn(root, toeA, toeB)];
  return inPicture(
    {
      areas: [
        { of: 'deposit', points: [root, ...(face.length > 0 ? face : [toeA, toeB])] },
        ...(fusion.length > 0 ? [{ of: 'melted' as const, points: [root, ...fusion] }] : []),
      ],
      lines: [
        { as: 'plate', points: [toeA, root, toeB] },
        { as: 'chord', points: [toeA, toeB] },
        { as: 'throat', points: throat },
        { as: 'face', points: face },
        { as: 'fusion', points: fusion },
      ],
      labels: [
        { text: 'A', reading: 'legA', between: [root, toeA], awayFrom: toeB },
        { text: 'B', reading: 'legB', between: [root, toeB], awayFrom: toeA },
        { text: 'throat', reading: 'throat', between: throat },
      ],
    },
    map,
  );
}
