/**
 * What a cut and etched groove weld shows, read from points marked on a picture of it. Lengths are in
 * the picture's own units; it may lie any way round and its y may run up or down.
 *
 * The front is where the cap is, the back where the root is. Cap and root bead are what stands beyond
 * the old front and back faces of the joint, a hollow what is missing.
 */
import { cutLevel, heightOver, heightOverPlate } from './face-height.ts';
import { fusionBeyondEdge } from './fusion-beyond-edge.ts';
import { grooveAreas } from './groove-areas.ts';
import type { GrooveMarks } from './groove-marks.ts';
import { type GrooveOutline, grooveOutline } from './groove-outline.ts';
import { distanceToCurve, middleOf } from './marked-lines.ts';
import type { Point } from './outline.ts';
import { betweenMarks, distance } from './smooth-curve.ts';

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

type Some<Name extends keyof GrooveReadings> = Pick<GrooveReadings, Name>;

/** Every reading that the marks allow; one whose marks are missing is left out. */
export function readGroove(marks: GrooveMarks): GrooveReadings {
  const { toeA, toeB, rootA, rootB } = marks;
  const outline = grooveOutline(marks);
  const inside = middleOf([toeA, toeB, rootA, rootB]);
  return {
    capWidth: distance(toeA, toeB),
    rootWidth: distance(rootA, rootB),
    ...plates(marks, outline, inside),
    ...cap(marks, outline, inside),
    ...rootBead(marks, outline, inside),
    ...throats(marks, outline, inside),
    ...sidewalls(marks, outline, inside),
    ...undercuts(marks, outline, inside),
    ...areas(marks, outline),
  };
}

function plates(
  marks: GrooveMarks,
  { front }: GrooveOutline,
  inside: Point,
): Some<'thickness' | 'unfusedA' | 'unfusedB'> {
  const found: Some<'thickness' | 'unfusedA' | 'unfusedB'> = {};
  const depthA = marks.backA.length >= 2 ? heightOverPlate(marks.backA, front, inside) : undefined;
  const depthB = marks.backB.length >= 2 ? heightOverPlate(marks.backB, front, inside) : undefined;
  if (depthA) found.unfusedA = -depthA(marks.rootA);
  if (depthB) found.unfusedB = -depthB(marks.rootB);
  const thicknesses = [
    ...(depthA && marks.frontA.length >= 2 ? [-depthA(front[0])] : []),
    ...(depthB && marks.frontB.length >= 2 ? [-depthB(front[1])] : []),
  ];
  if (thicknesses.length > 0) found.thickness = Math.min(...thicknesses);
  return found;
}

function cap(
  marks: GrooveMarks,
  outline: GrooveOutline,
  inside: Point,
): Some<'capHeight' | 'underfill'> {
  if (marks.cap.length === 0) return {};
  const heights = betweenMarks(outline.cap).map(heightOver(outline.front, inside));
  return { capHeight: Math.max(...heights), underfill: -Math.min(...heights) };
}

function rootBead(
  marks: GrooveMarks,
  outline: GrooveOutline,
  inside: Point,
): Some<'rootHeight' | 'rootHollow'> {
  if (marks.rootBead.length === 0) return {};
  const heights = betweenMarks(outline.root).map(heightOver(outline.back, inside));
  return { rootHeight: Math.max(...heights), rootHollow: -Math.min(...heights) };
}

function throats(
  marks: GrooveMarks,
  outline: GrooveOutline,
  inside: Point,
): Some<'throat' | 'wholeThickness'> {
  if (marks.cap.length === 0) return {};
  const levelCap = cutLevel(outline.cap, outline.front, inside);
  const levelRoot = cutLevel(outline.root, outline.back, inside);
  const throat = Math.min(...levelRoot.map((point) => distanceToCurve(point, levelCap)));
  if (marks.rootBead.length === 0 || marks.onStrip) return { throat };
  const wholeThickness = Math.min(
    ...outline.root.map((point) => distanceToCurve(point, outline.cap)),
  );
  return { throat, wholeThickness };
}

function sidewalls(
  marks: GrooveMarks,
  { edgeA, edgeB, fusionA, fusionB }: GrooveOutline,
  inside: Point,
): Some<'sidewallA' | 'sidewallMostA' | 'sidewallB' | 'sidewallMostB'> {
  const a = fusionBeyondEdge(edgeA, marks.fusionA.length > 0 ? fusionA : [], inside);
  const b = fusionBeyondEdge(edgeB, marks.fusionB.length > 0 ? fusionB : [], inside);
  return {
    ...(a && { sidewallA: a.least, sidewallMostA: a.most }),
    ...(b && { sidewallB: b.least, sidewallMostB: b.most }),
  };
}

function undercuts(
  marks: GrooveMarks,
  { front }: GrooveOutline,
  inside: Point,
): Some<'undercutA' | 'undercutB'> {
  const depth = (bottoms: readonly Point[], face: readonly Point[]) =>
    -Math.min(...bottoms.map(heightOverPlate(face, front, inside)));
  return {
    ...(marks.undercutA.length > 0 && { undercutA: depth(marks.undercutA, marks.frontA) }),
    ...(marks.undercutB.length > 0 && { undercutB: depth(marks.undercutB, marks.frontB) }),
  };
}

/** The weld is closed all round only where cap and both fusion lines are marked. */
function areas(
  { cap: capMarks, fusionA, fusionB, onStrip }: GrooveMarks,
  outline: GrooveOutline,
): Some<'weldArea' | 'depositArea' | 'meltedArea' | 'dilution'> {
  const isClosed = capMarks.length > 0 && fusionA.length > 0 && fusionB.length > 0;
  return isClosed ? grooveAreas(onStrip, outline) : {};
}
