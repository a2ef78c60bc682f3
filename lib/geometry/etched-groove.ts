/**
 * What a cut and etched groove weld shows, read from points marked on a picture of it. Lengths are in
 * the picture's own units; it may lie any way round and its y may run up or down.
 *
 * The front is where the cap is, the back where the root is. Between the plates the old front face
 * runs straight from one toe to the other, both brought onto the plates' marked faces first; the back
 * likewise. Cap and root bead are what stands beyond those two lines, a hollow what is missing.
 */
import {
  distanceToCurve,
  inOrder,
  keptWhere,
  mainAxis,
  middleOf,
  minus,
  straight,
} from './marked-lines.ts';
import { type Outline, type Point, signedArea } from './outline.ts';
import { chordsBetween, distance, smoothCurve } from './smooth-curve.ts';

export interface GrooveMarks {
  /** Where the cap meets each plate. */
  toeA: Point;
  toeB: Point;
  /** Where the fusion on each plate ends at the root. */
  rootA: Point;
  rootB: Point;
  /** Along the cap between the toes. May be empty, as every list here. */
  cap: readonly Point[];
  /** Along the root bead's surface, or the edge of the melted metal in a backing strip. */
  rootBead: readonly Point[];
  /** Along the edge of the melted metal, from toe to root. */
  fusionA: readonly Point[];
  fusionB: readonly Point[];
  /** Along the edge as it was prepared, from the front down: two, or three where there is a land. */
  edgeA: readonly Point[];
  edgeB: readonly Point[];
  /** On the old faces of the plates beside the weld; fewer than two say nothing. */
  frontA: readonly Point[];
  frontB: readonly Point[];
  backA: readonly Point[];
  backB: readonly Point[];
  /** The bottom of an undercut beside each toe. */
  undercutA: readonly Point[];
  undercutB: readonly Point[];
  /** The root bead lies in a backing strip, which it melts. */
  onStrip: boolean;
}

export interface GrooveReadings {
  capWidth: number;
  rootWidth: number;
  /** Greatest rise over the front; below 0 where the cap lies under it everywhere. */
  capHeight?: number;
  /** Greatest depth of the cap under the front; below 0 where it rises everywhere. */
  underfill?: number;
  /** Greatest rise of the root bead beyond the back, or its depth into the strip. */
  rootHeight?: number;
  /** Greatest hollow of the root, seen from the back. */
  rootHollow?: number;
  /** Of the thinner plate, from its marked faces. */
  thickness?: number;
  /** Weld metal at its thinnest, of which neither cap nor root bead counts. */
  throat?: number;
  /** Weld metal at its thinnest, cap and root bead included. */
  wholeThickness?: number;
  /** From the back of each plate to where its fusion ends; below 0 where it goes beyond. */
  unfusedA?: number;
  unfusedB?: number;
  /** Least and greatest fusion beyond each prepared edge; below 0 for a gap. */
  sidewallA?: number;
  sidewallB?: number;
  sidewallMostA?: number;
  sidewallMostB?: number;
  /** Depth below the front. */
  undercutA?: number;
  undercutB?: number;
  /** All weld metal, then what came from the electrode, what was plate or strip, and its share in percent. */
  weldArea?: number;
  depositArea?: number;
  meltedArea?: number;
  dilution?: number;
}

type Line = readonly [Point, Point];

/** The curves and lines of a marked groove, each in the order of its name: from the front, from plate A. */
export interface GrooveOutline {
  /** The old faces of the joint, from plate A to plate B. */
  front: Line;
  back: Line;
  cap: Outline;
  root: Outline;
  fusionA: Outline;
  fusionB: Outline;
  edgeA: Outline;
  edgeB: Outline;
}

export function grooveOutline(marks: GrooveMarks): GrooveOutline {
  const { toeA, toeB, rootA, rootB } = marks;
  const curve = (from: Point, points: readonly Point[], to: Point) =>
    smoothCurve([from, ...inOrder(points, from, to), to]);
  return {
    front: [onFace(toeA, marks.frontA), onFace(toeB, marks.frontB)],
    back: [onFace(rootA, marks.backA), onFace(rootB, marks.backB)],
    cap: curve(toeA, marks.cap, toeB),
    root: curve(rootA, marks.rootBead, rootB),
    fusionA: curve(toeA, marks.fusionA, rootA),
    fusionB: curve(toeB, marks.fusionB, rootB),
    edgeA: inOrder(marks.edgeA, toeA, rootA),
    edgeB: inOrder(marks.edgeB, toeB, rootB),
  };
}

export function readGroove(marks: GrooveMarks): GrooveReadings {
  const { toeA, toeB, rootA, rootB } = marks;
  const outline = grooveOutline(marks);
  const { front, back, cap, root } = outline;
  const middle = middleOf([toeA, toeB, rootA, rootB]);
  const overFront = heightOver(front, middle);
  const overBack = heightOver(back, middle);
  const readings: GrooveReadings = {
    capWidth: distance(toeA, toeB),
    rootWidth: distance(rootA, rootB),
    ...thicknessOf(marks, front, middle),
  };
  const capped = marks.cap.length > 0;
  const rooted = marks.rootBead.length > 0;
  if (capped) {
    const heights = betweenMarks(cap).map(overFront);
    readings.capHeight = Math.max(...heights);
    readings.underfill = -Math.min(...heights);
  }
  if (rooted) {
    const heights = betweenMarks(root).map(overBack);
    readings.rootHeight = Math.max(...heights);
    readings.rootHollow = -Math.min(...heights);
  }
  if (capped) {
    const flush = cut(cap, overFront, front, middle);
    const flushRoot = cut(root, overBack, back, middle);
    readings.throat = Math.min(...flushRoot.map((point) => distanceToCurve(point, flush)));
    if (rooted && !marks.onStrip)
      readings.wholeThickness = Math.min(...root.map((point) => distanceToCurve(point, cap)));
  }
  sidewalls(readings, marks, outline, middle);
  if (marks.undercutA.length > 0)
    readings.undercutA = -Math.min(...marks.undercutA.map(heightAt(marks.frontA, front, middle)));
  if (marks.undercutB.length > 0)
    readings.undercutB = -Math.min(...marks.undercutB.map(heightAt(marks.frontB, front, middle)));
  if (capped && marks.fusionA.length > 0 && marks.fusionB.length > 0)
    Object.assign(readings, areasOf(marks.onStrip, outline));
  return readings;
}

/** A point brought onto the line of a plate's face; itself where no face is marked. */
function onFace(point: Point, face: readonly Point[]): Point {
  if (face.length < 2) return point;
  const [x, y] = mainAxis(face);
  const [middleX, middleY] = middleOf(face);
  const along = (point[0] - middleX) * x + (point[1] - middleY) * y;
  return [middleX + along * x, middleY + along * y];
}

/** How far a point lies beyond a face of the joint, seen from inside it. */
function heightOver([a, b]: Line, inside: Point): (point: Point) => number {
  const { sideOf } = straight(a, b);
  const out = sideOf(inside) > 0 ? -1 : 1;
  return (point) => out * sideOf(point);
}

/** Over the plate's own face where it is marked, else over the line between the toes. */
function heightAt(face: readonly Point[], front: Line, inside: Point): (point: Point) => number {
  if (face.length < 2) return heightOver(front, inside);
  const [x, y] = mainAxis(face);
  const on = middleOf(face);
  return heightOver([on, [on[0] + x, on[1] + y]], inside);
}

/** The part of a curve from its first inner mark to its last. */
function betweenMarks(curve: Outline): Outline {
  const inner = curve.slice(chordsBetween, -chordsBetween);
  return inner.length > 0 ? inner : curve;
}

/** A curve with everything beyond a face of the joint brought back onto it. */
function cut(
  curve: Outline,
  height: (point: Point) => number,
  [a, b]: Line,
  inside: Point,
): Outline {
  const [x, y] = minus(b, a);
  const length = Math.sqrt(x * x + y * y);
  const out = straight(a, b).sideOf(inside) > 0 ? -1 : 1;
  const [awayX, awayY] = [(-out * y) / length, (out * x) / length];
  return curve.map((point) => {
    const over = Math.max(0, height(point));
    return [point[0] - over * awayX, point[1] - over * awayY];
  });
}

function thicknessOf(
  marks: GrooveMarks,
  front: Line,
  inside: Point,
): Pick<GrooveReadings, 'thickness' | 'unfusedA' | 'unfusedB'> {
  const found: Pick<GrooveReadings, 'thickness' | 'unfusedA' | 'unfusedB'> = {};
  const depthA = marks.backA.length >= 2 ? heightAt(marks.backA, front, inside) : undefined;
  const depthB = marks.backB.length >= 2 ? heightAt(marks.backB, front, inside) : undefined;
  if (depthA) found.unfusedA = -depthA(marks.rootA);
  if (depthB) found.unfusedB = -depthB(marks.rootB);
  const plates = [
    ...(depthA && marks.frontA.length >= 2 ? [-depthA(front[0])] : []),
    ...(depthB && marks.frontB.length >= 2 ? [-depthB(front[1])] : []),
  ];
  if (plates.length > 0) found.thickness = Math.min(...plates);
  return found;
}

function sidewalls(
  readings: GrooveReadings,
  marks: GrooveMarks,
  { edgeA, edgeB, fusionA, fusionB }: GrooveOutline,
  inside: Point,
): void {
  const a = beyond(edgeA, marks.fusionA.length > 0 ? fusionA : [], inside);
  const b = beyond(edgeB, marks.fusionB.length > 0 ? fusionB : [], inside);
  if (a) [readings.sidewallA, readings.sidewallMostA] = a;
  if (b) [readings.sidewallB, readings.sidewallMostB] = b;
}

/** Least and greatest distance of a fusion line beyond a prepared edge, where it runs beside it. */
function beyond(
  edge: Outline,
  fusion: Outline,
  inside: Point,
): readonly [number, number] | undefined {
  if (edge.length < 2) return undefined;
  const [top, bottom] = [edge[0], edge.at(-1)] as [Point, Point];
  const besideTop = pastEnd(top, edge[1] as Point);
  const besideBottom = pastEnd(bottom, edge.at(-2) as Point);
  const beside = keptWhere(keptWhere(fusion, besideTop), besideBottom);
  if (beside.length === 0) return undefined;
  const depths = beside.map((point) => depthBeyond(point, edge, inside));
  return [Math.min(...depths), Math.max(...depths)];
}

/** How far along a point lies from the end of an edge toward its inside; below 0 past the end. */
const pastEnd = (end: Point, next: Point) => {
  const [x, y] = minus(next, end);
  return (point: Point) => x * (point[0] - end[0]) + y * (point[1] - end[1]);
};

/** Distance from the nearest piece of the edge, below 0 on the weld's own side of it. */
function depthBeyond([x, y]: Point, edge: Outline, inside: Point): number {
  let nearest = Number.POSITIVE_INFINITY;
  let depth = 0;
  for (let i = 1; i < edge.length; i++) {
    const [ax, ay] = edge[i - 1] as Point;
    const [bx, by] = edge[i] as Point;
    const [dx, dy] = [bx - ax, by - ay];
    const share = ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy);
    const on = Math.max(0, Math.min(1, share));
    const away = (ax + on * dx - x) ** 2 + (ay + on * dy - y) ** 2;
    if (away >= nearest) continue;
    nearest = away;
    const side = dx * (y - ay) - dy * (x - ax);
    const inner = dx * (inside[1] - ay) - dy * (inside[0] - ax);
    depth = Math.sqrt(away) * (side * inner > 0 ? -1 : 1);
  }
  return depth;
}

function areasOf(
  onStrip: boolean,
  { cap, root, fusionA, fusionB, edgeA, edgeB }: GrooveOutline,
): Pick<GrooveReadings, 'weldArea' | 'depositArea' | 'meltedArea' | 'dilution'> {
  // Each piece closed by itself; together they go once round the weld.
  const corners = [cap[0], cap.at(-1), root.at(-1), root[0]] as Outline;
  const [sideA, sideB, under] = [signedArea(fusionA), signedArea(fusionB), signedArea(root)];
  const round = signedArea(cap) + sideB - under - sideA + signedArea(corners);
  const turn = Math.sign(round);
  const weldArea = Math.abs(round);
  const [toeA, rootA] = [fusionA[0], fusionA.at(-1)] as [Point, Point];
  const [toeB, rootB] = [fusionB[0], fusionB.at(-1)] as [Point, Point];
  if (edgeA.length < 2 || edgeB.length < 2) return { weldArea };
  const meltedArea =
    turn *
    (signedArea([...edgeA, rootA, toeA]) -
      sideA +
      sideB -
      signedArea([...edgeB, rootB, toeB]) -
      (onStrip ? under : 0));
  return {
    weldArea,
    meltedArea,
    depositArea: weldArea - meltedArea,
    dilution: (100 * meltedArea) / weldArea,
  };
}
