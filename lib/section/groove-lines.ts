/**
 * The lines that a measured groove is drawn with: the old faces, the prepared edges, cap, root bead,
 * edges of fusion and throat. Found on the squared-up section and sent back to the picture.
 */
import type { GrooveMarks } from '../geometry/groove-marks.ts';
import { grooveOutline } from '../geometry/groove-outline.ts';
import { type Homography, mapped } from '../geometry/homography.ts';
import { middleOf } from '../geometry/marked-lines.ts';
import type { Point } from '../geometry/outline.ts';
import { distance } from '../geometry/smooth-curve.ts';
import { type DrawnLabel, type DrawnSection, flat, footOn, inPicture } from './drawn-section.ts';

/**
 * @param map from the picture to the section; left out where the picture is the section
 * @returns the drawing in pixels of the picture; undefined where a mark lies beyond the horizon of
 * a tilted one
 */
export function grooveLines(marks: GrooveMarks, map: Homography = flat): DrawnSection | undefined {
  let lost = false;
  const place = (point: Point): Point => {
    const there = mapped(map, point);
    lost ||= !there;
    return there ?? point;
  };
  const placed = Object.fromEntries(
    Object.entries(marks).map(([name, value]) => [
      name,
      typeof value === 'boolean'
        ? value
        : typeof value[0] === 'number'
          ? place(value as Point)
          : (value as readonly Point[]).map(place),
    ]),
  ) as unknown as GrooveMarks;
  if (lost) return undefined;
  const { front, back, cap, root, fusionA, fusionB, edgeA, edgeB } = grooveOutline(placed);
  const fused = marks.fusionA.length > 0 && marks.fusionB.length > 0;
  const edged = edgeA.length > 1 && edgeB.length > 1;
  const middle = middleOf(back);
  const throat: [Point, Point] = [middle, footOn(middle, ...front)];
  const side = (fusion: readonly Point[]) => fusion[Math.floor(fusion.length / 2)] as Point;
  const crown = farthest(cap, front);
  const drop = farthest(root, back);
  const beside = (plate: 'A' | 'B', fusion: readonly Point[]): DrawnLabel => ({
    text: plate,
    reading: `sidewall${plate}`,
    between: [fusion[0] as Point, side(fusion)],
    awayFrom: middleOf(throat),
  });
  return inPicture(
    {
      areas: [
        {
          of: 'deposit',
          points: [...cap, ...fusionB, ...root.toReversed(), ...fusionA.toReversed()],
        },
        ...(fused && edged
          ? [
              { of: 'melted' as const, points: [...fusionA.toReversed(), ...edgeA] },
              { of: 'melted' as const, points: [...fusionB.toReversed(), ...edgeB] },
            ]
          : []),
        ...(marks.onStrip && root.length > 2 ? [{ of: 'melted' as const, points: root }] : []),
      ],
      lines: [
        { as: 'chord', points: front },
        { as: 'chord', points: back },
        { as: 'throat', points: throat },
        { as: 'plate', points: edgeA },
        { as: 'plate', points: edgeB },
        ...(marks.cap.length > 0 ? [{ as: 'face' as const, points: cap }] : []),
        ...(marks.rootBead.length > 0
          ? [{ as: marks.onStrip ? ('fusion' as const) : ('face' as const), points: root }]
          : []),
        ...(marks.fusionA.length > 0 ? [{ as: 'fusion' as const, points: fusionA }] : []),
        ...(marks.fusionB.length > 0 ? [{ as: 'fusion' as const, points: fusionB }] : []),
      ],
      labels: [
        { text: 'cap', reading: 'capHeight', between: [cap[0] as Point, crown], awayFrom: middle },
        { text: 'root', reading: 'rootHeight', between: [drop, drop] },
        { text: 'throat', reading: 'throat', between: throat },
        beside('A', fusionA),
        beside('B', fusionB),
      ],
    },
    map,
  );
}

/** The place of a curve farthest from a straight line. */
function farthest(curve: readonly Point[], [a, b]: readonly [Point, Point]): Point {
  let [best, most] = [curve[0] as Point, -1];
  for (const point of curve) {
    const away = distance(point, footOn(point, a, b));
    if (away > most) [best, most] = [point, away];
  }
  return best;
}
