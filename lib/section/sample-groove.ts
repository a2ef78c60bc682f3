/**
 * A drawn section of a V groove whose true sizes are known, for learning to measure: plate of 9.5 mm,
 * 60° between the edges, a land of 1 mm, an open root of 2.4 mm. Every curve is a cubic Bézier curve.
 */
import { bezierPoint, bow, type Cubic, sweptArea } from '../geometry/bezier.ts';
import type { Point } from '../geometry/outline.ts';

const pixelsPerMillimeter = 40;
const thickness = 9.5;
const land = 1;
const halfOpening = 1.2;
const halfTop = halfOpening + (thickness - land) * Math.tan(Math.PI / 6);
/** Where the middle of the joint's back lies in the picture. */
const origin: Point = [620, 560];

/** Millimeters from there, right and up, to the picture, whose y runs down. */
const inPicture = ([along, up]: Point): Point => [
  origin[0] + along * pixelsPerMillimeter,
  origin[1] - up * pixelsPerMillimeter,
];

const toeA: Point = [-halfTop - 1.1, thickness];
const toeB: Point = [halfTop + 0.8, thickness];
const rootA: Point = [-halfOpening - 0.9, 0];
const rootB: Point = [halfOpening + 0.7, 0];
const capHeight = 1.3;
const rootHeight = 0.9;
const cap = bow(toeA, toeB, [0, capHeight]);
const rootBead = bow(rootA, rootB, [0, -rootHeight]);
const fusionA: Cubic = [toeA, [-6.9, 6.2], [-3.2, 3.6], rootA];
const fusionB: Cubic = [toeB, [5.2, 7.1], [2.9, 3.1], rootB];
const edgeA: readonly Point[] = [
  [-halfTop, thickness],
  [-halfOpening, land],
  [-halfOpening, 0],
];
const edgeB: readonly Point[] = edgeA.map(([x, y]): Point => [-x, y]);

const along = (curve: Cubic, count: number): Point[] =>
  Array.from({ length: count }, (_, i) => inPicture(bezierPoint(curve, (i + 1) / (count + 1))));

/** What there is to draw, in pixels of the picture. */
export const groovePicture = {
  width: 1240,
  height: 820,
  front: inPicture([0, thickness])[1],
  back: origin[1],
  toeA: inPicture(toeA),
  toeB: inPicture(toeB),
  rootA: inPicture(rootA),
  rootB: inPicture(rootB),
  cap: along(cap, 40),
  rootBead: along(rootBead, 20),
  fusionA: along(fusionA, 40),
  fusionB: along(fusionB, 40),
  edgeA: edgeA.map(inPicture),
  edgeB: edgeB.map(inPicture),
  /** Where each pass melted into the ones before. */
  passLines: (
    [
      [bezierPoint(fusionA, 0.8), [0, 3.3], bezierPoint(fusionB, 0.8)],
      [bezierPoint(fusionA, 0.58), [0, 5.9], bezierPoint(fusionB, 0.58)],
      [bezierPoint(fusionA, 0.3), [-1.2, 8.6], [0.5, 5.2]],
      [[0.2, 5.8], [1.6, 8.6], bezierPoint(fusionB, 0.26)],
      [
        [-2, 7.5],
        [-0.6, 8.4],
        [0.4, 10.78],
      ],
    ] satisfies [Point, Point, Point][]
  ).map((line) => line.map(inPicture) as unknown as readonly [Point, Point, Point]),
  /** The rule lies along the bottom; one tick a millimeter. */
  rule: { from: [120, 745] as Point, millimeters: 25, step: pixelsPerMillimeter },
};

/** Marks as a careful eye would place them. */
export const grooveSampleMarks = {
  ends: [groovePicture.rule.from, [120 + 25 * pixelsPerMillimeter, 745] as Point],
  toeA: [groovePicture.toeA],
  toeB: [groovePicture.toeB],
  rootA: [groovePicture.rootA],
  rootB: [groovePicture.rootB],
  face: along(cap, 7),
  rootBead: along(rootBead, 5),
  fusionA: along(fusionA, 7),
  fusionB: along(fusionB, 7),
  edgeA: groovePicture.edgeA,
  edgeB: groovePicture.edgeB,
  plateA: [inPicture([-8.6, thickness]), inPicture([-13.6, thickness])],
  plateB: [inPicture([8.4, thickness]), inPicture([13.6, thickness])],
  backA: [inPicture([-3.4, 0]), inPicture([-12, 0])],
  backB: [inPicture([3.2, 0]), inPicture([12, 0])],
  passes: (
    [
      [0, 0.6],
      [0, 3.6],
      [-1.8, 6.2],
      [2.4, 6.4],
      [-3.2, 9],
      [3.2, 9.2],
    ] as const
  ).map((point) => inPicture(point)),
} as const;

/** Millimeters between the two marked ends of the rule. */
export const grooveSampleLength = 25;

/** True sizes in millimeters, square millimeters and percent. */
export const grooveTruth = (() => {
  const line = ([ax, ay]: Point, [bx, by]: Point) => (ax * by - ay * bx) / 2;
  const lines = (points: readonly Point[]) =>
    points.slice(1).reduce((sum, point, i) => sum + line(points[i] as Point, point), 0);
  const [sweptA, sweptB] = [sweptArea(fusionA), sweptArea(fusionB)];
  // Round the weld against the clock's hand: down side A, along the root, up side B, back over the cap.
  const weldArea = sweptA + sweptArea(rootBead) - sweptB - sweptArea(cap);
  const meltedArea =
    sweptA +
    line(rootA, edgeA[2] as Point) -
    lines(edgeA) +
    line(edgeA[0] as Point, toeA) -
    (sweptB + line(rootB, edgeB[2] as Point) - lines(edgeB) + line(edgeB[0] as Point, toeB));
  return {
    capWidth: toeB[0] - toeA[0],
    rootWidth: rootB[0] - rootA[0],
    capHeight,
    rootHeight,
    thickness,
    throat: thickness,
    sidewallA: leastBeyond(fusionA, -1),
    sidewallB: leastBeyond(fusionB, 1),
    weldArea,
    depositArea: weldArea - meltedArea,
    meltedArea,
    dilution: (100 * meltedArea) / weldArea,
  };
})();

/** Least distance of a fusion line beyond its edge: along the bevel, then along the land. */
function leastBeyond(fusion: Cubic, side: 1 | -1): number {
  const [cos, sin] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
  const depths = Array.from({ length: 4001 }, (_, i) => {
    const [x, y] = bezierPoint(fusion, i / 4000);
    const out = side * x - halfOpening;
    const up = y - land;
    const onBevel = up * cos + out * sin;
    if (onBevel > (thickness - land) / cos) return Number.POSITIVE_INFINITY;
    const bevel = onBevel >= 0 ? out * cos - up * sin : Number.POSITIVE_INFINITY;
    return Math.min(bevel, up <= 0 ? out : Number.POSITIVE_INFINITY);
  });
  return Math.min(...depths);
}
