/**
 * What a cut and etched fillet shows, read from points marked on a picture of it. Lengths are in
 * the picture's own units; it may lie any way round and its y may run up or down.
 *
 * Plate A and plate B meet at the root. A leg runs from the root along a plate to the toe. The throat
 * is measured from the root to the straight line between the toes, less what a hollow face lacks; the
 * actual throat from the deepest fusion behind the root to the face itself. Penetration is measured
 * behind the root, along the line that halves the corner.
 */
import { depthBehind, depthBelow, depthBesideToe } from './depth-of-fusion.ts';
import { distanceToCurve, dot, inOrder, mainAxis, minus, straight, unit } from './marked-lines.ts';
import { type Point, signedArea } from './outline.ts';
import { betweenMarks, distance, smoothCurve } from './smooth-curve.ts';

export interface FilletMarks {
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

export interface FilletReadings {
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

/** The corner of the joint, the way each plate runs from it, and the legs along them. */
interface Corner {
  root: Point;
  alongA: Point;
  alongB: Point;
  legA: number;
  legB: number;
}

type Some<Name extends keyof FilletReadings> = Partial<Pick<FilletReadings, Name>>;

/** Every reading that the marks allow; one whose marks are missing is left out. */
export function readFillet(marks: FilletMarks): FilletReadings {
  const { root, toeA, toeB } = marks;
  const alongA = direction(root, toeA, marks.plateA);
  const alongB = direction(root, toeB, marks.plateB);
  const legA = dot(minus(toeA, root), alongA);
  const legB = dot(minus(toeB, root), alongB);
  const corner = { root, alongA, alongB, legA, legB };
  const face = smoothCurve([toeA, ...inOrder(marks.face, toeA, toeB), toeB]);
  const onFace = faceReadings(marks, face);
  return {
    legA,
    legB,
    angle: (Math.acos(Math.max(-1, Math.min(1, dot(alongA, alongB)))) * 180) / Math.PI,
    faceWidth: distance(toeA, toeB),
    ...onFace,
    throat: distanceToCurve(root, [toeA, toeB]) - Math.max(0, onFace.hollow ?? 0),
    ...fusionReadings(marks, corner, face, onFace.depositArea),
    ...undercuts(marks, corner),
  };
}

function faceReadings(
  marks: FilletMarks,
  face: readonly Point[],
): Some<'rise' | 'hollow' | 'depositArea'> {
  if (marks.face.length === 0) return {};
  const chord = straight(marks.toeA, marks.toeB);
  const outward = chord.sideOf(marks.root) > 0 ? -1 : 1;
  const rises = betweenMarks(face).map((point) => outward * chord.sideOf(point));
  return {
    rise: Math.max(...rises),
    hollow: -Math.min(...rises),
    depositArea: Math.abs(signedArea([marks.root, ...face])),
  };
}

function fusionReadings(
  marks: FilletMarks,
  corner: Corner,
  face: readonly Point[],
  depositArea: number | undefined,
): Some<'penetration' | 'actualThroat' | 'fusionA' | 'fusionB' | 'meltedArea' | 'dilution'> {
  if (marks.fusion.length === 0) return {};
  const { toeA, toeB } = marks;
  const { root, alongA, alongB, legA, legB } = corner;
  const fusion = smoothCurve([toeA, ...inOrder(marks.fusion, toeA, toeB), toeB]);
  const bisector = unit([alongA[0] + alongB[0], alongA[1] + alongB[1]]);
  const penetration = depthBehind(root, bisector, fusion);
  const turn = Math.sign(signedArea([root, toeA, toeB]));
  const meltedArea = -turn * signedArea([root, ...fusion]);
  const found: ReturnType<typeof fusionReadings> = {
    fusionA: depthBesideToe(root, alongA, alongB, legA, fusion),
    fusionB: depthBesideToe(root, alongB, alongA, legB, fusion),
    meltedArea,
  };
  if (penetration !== undefined) found.penetration = penetration;
  if (depositArea === undefined) return found;
  // A line that lies in the weld melted no plate; its area runs below none.
  const melted = Math.max(0, meltedArea);
  found.dilution = (100 * melted) / (melted + depositArea);
  if (penetration !== undefined) {
    const deepest: Point = [
      root[0] - penetration * bisector[0],
      root[1] - penetration * bisector[1],
    ];
    found.actualThroat = distanceToCurve(deepest, face);
  }
  return found;
}

function undercuts(
  { undercutA, undercutB }: FilletMarks,
  { root, alongA, alongB }: Corner,
): Some<'undercutA' | 'undercutB'> {
  return {
    ...(undercutA?.length && { undercutA: depthBelow(root, alongA, alongB, undercutA) }),
    ...(undercutB?.length && { undercutB: depthBelow(root, alongB, alongA, undercutB) }),
  };
}

/** The way a plate runs from the root: along its marked face, or to the toe where none is marked. */
function direction(root: Point, toe: Point, plate: readonly Point[]): Point {
  const toToe = minus(toe, root);
  if (plate.length < 2) return unit(toToe);
  const along = mainAxis(plate);
  return dot(along, toToe) < 0 ? [-along[0], -along[1]] : along;
}
