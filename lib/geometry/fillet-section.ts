/**
 * What a cut and etched fillet shows, read from points marked on a picture of it. Lengths are in
 * the picture's own units; it may lie any way round and its y may run up or down.
 *
 * Plate A and plate B meet at the root. A leg runs from the root along a plate to the toe. The throat
 * is measured from the root to the straight line between the toes, less what a hollow face lacks; the
 * actual throat from the deepest fusion behind the root to the face itself. Penetration is measured
 * behind the root, along the line that halves the corner.
 */
import {
  distanceToCurve,
  dot,
  inOrder,
  keptWhere,
  mainAxis,
  minus,
  straight,
  unit,
} from './marked-lines.ts';
import { type Outline, type Point, signedArea } from './outline.ts';
import { betweenMarks, distance, smoothCurve } from './smooth-curve.ts';

export interface SectionMarks {
  root: Point;
  toeA: Point;
  toeB: Point;
  /** Along the face between the toes, in order from either side. May be empty. */
  face: readonly Point[];
  /** Along the edge of the melted metal, from toe to toe behind the root. May be empty. */
  fusion: readonly Point[];
  /** On the face of each plate where it was not melted; fewer than two say nothing. */
  plateA: readonly Point[];
  plateB: readonly Point[];
  /** The bottom of an undercut beside each toe; the deepest one counts. */
  undercutA?: readonly Point[];
  undercutB?: readonly Point[];
}

export interface SectionReadings {
  legA: number;
  legB: number;
  /** Between the plates, in degrees. */
  angle: number;
  /** From toe to toe. */
  faceWidth: number;
  throat: number;
  actualThroat?: number;
  /** Greatest rise of the face over the line between the toes; below 0 for a hollow face. */
  rise?: number;
  /** Greatest depth of the face under that line; below 0 for a face that rises everywhere. */
  hollow?: number;
  /** Below 0 where fusion stops short of the root. */
  penetration?: number;
  /** Deepest fusion into each plate between the middle of the leg and the toe. */
  fusionA?: number;
  fusionB?: number;
  /** Depth below each plate's old face. */
  undercutA?: number;
  undercutB?: number;
  /** Weld metal outside the plates' old faces. */
  depositArea?: number;
  /** Plate metal inside the fusion line. */
  meltedArea?: number;
  /** Melted plate in the weld metal, in percent. */
  dilution?: number;
}

/** Every reading that the marks allow; one whose marks are missing is left out. */
export function readSection(marks: SectionMarks): SectionReadings {
  const { root, toeA, toeB } = marks;
  const alongA = direction(root, toeA, marks.plateA);
  const alongB = direction(root, toeB, marks.plateB);
  const chord = straight(toeA, toeB);
  const outward = chord.sideOf(root) > 0 ? -1 : 1;
  const throatToChord = distanceToCurve(root, [toeA, toeB]);
  const readings: SectionReadings = {
    legA: dot(minus(toeA, root), alongA),
    legB: dot(minus(toeB, root), alongB),
    angle: (Math.acos(Math.max(-1, Math.min(1, dot(alongA, alongB)))) * 180) / Math.PI,
    faceWidth: distance(toeA, toeB),
    throat: throatToChord,
  };
  const face = smoothCurve([toeA, ...inOrder(marks.face, toeA, toeB), toeB]);
  if (marks.face.length > 0) {
    const rises = betweenMarks(face).map((point) => outward * chord.sideOf(point));
    readings.rise = Math.max(...rises);
    readings.hollow = -Math.min(...rises);
    readings.throat = throatToChord - Math.max(0, readings.hollow);
    readings.depositArea = Math.abs(signedArea([root, ...face]));
  }
  if (marks.fusion.length > 0) {
    const fusion = smoothCurve([toeA, ...inOrder(marks.fusion, toeA, toeB), toeB]);
    const bisector = unit([alongA[0] + alongB[0], alongA[1] + alongB[1]]);
    const depth = depthBehind(root, bisector, fusion);
    const turn = Math.sign(signedArea([root, toeA, toeB]));
    readings.meltedArea = -turn * signedArea([root, ...fusion]);
    if (depth !== undefined) readings.penetration = depth;
    readings.fusionA = depthBesideToe(root, alongA, alongB, readings.legA, fusion);
    readings.fusionB = depthBesideToe(root, alongB, alongA, readings.legB, fusion);
    if (readings.depositArea !== undefined) {
      // A line that lies in the weld melted no plate; its area runs below none.
      const melted = Math.max(0, readings.meltedArea);
      readings.dilution = (100 * melted) / (melted + readings.depositArea);
      if (depth !== undefined) {
        const deepest: Point = [root[0] - depth * bisector[0], root[1] - depth * bisector[1]];
        readings.actualThroat = distanceToCurve(deepest, face);
      }
    }
  }
  if (marks.undercutA?.length)
    readings.undercutA = depthBelow(root, alongA, alongB, marks.undercutA);
  if (marks.undercutB?.length)
    readings.undercutB = depthBelow(root, alongB, alongA, marks.undercutB);
  return readings;
}

/** The way a plate runs from the root: along its marked face, or to the toe where none is marked. */
function direction(root: Point, toe: Point, plate: readonly Point[]): Point {
  const toToe = minus(toe, root);
  if (plate.length < 2) return unit(toToe);
  const along = mainAxis(plate);
  return dot(along, toToe) < 0 ? [-along[0], -along[1]] : along;
}

/** How far behind the root the curve crosses the line that halves the corner, at its deepest. */
function depthBehind(root: Point, bisector: Point, curve: Outline): number | undefined {
  let deepest: number | undefined;
  const [rootX, rootY] = root;
  const [outX, outY] = bisector;
  let [sideBefore, alongBefore] = [Number.NaN, Number.NaN];
  for (const [x, y] of curve) {
    const side = outX * (y - rootY) - outY * (x - rootX);
    const along = outX * (x - rootX) + outY * (y - rootY);
    if (sideBefore !== side && sideBefore * side <= 0) {
      const share = sideBefore / (sideBefore - side);
      const depth = -((1 - share) * alongBefore + share * along);
      deepest = Math.max(deepest ?? depth, depth);
    }
    [sideBefore, alongBefore] = [side, along];
  }
  return deepest;
}

/** How far the deepest of the points lies behind a plate's face, seen from the other plate. */
function depthBelow(root: Point, along: Point, other: Point, points: readonly Point[]): number {
  const behind = Math.sign(along[0] * other[1] - along[1] * other[0]);
  let deepest = Number.NEGATIVE_INFINITY;
  for (const point of points) {
    const side = along[0] * (point[1] - root[1]) - along[1] * (point[0] - root[0]);
    deepest = Math.max(deepest, -behind * side);
  }
  return deepest;
}

/**
 * The fusion line ends at the toe, so there is always a point to look at; where it passes the middle of
 * the leg, it is cut there.
 */
function depthBesideToe(root: Point, along: Point, other: Point, leg: number, fusion: Outline) {
  const middle = dot(root, along) + leg / 2;
  const past = (point: Point) => (dot(point, along) - middle) * Math.sign(leg);
  return depthBelow(root, along, other, keptWhere(fusion, past));
}
