/**
 * A drawn section of a fillet whose true sizes are known, for learning to measure: a tee of plates
 * at a right angle, a face that bulges as a parabola, and a fusion line that is a cubic Bézier curve.
 */
import { bezierPoint, bow, type Cubic, sweptArea } from '../geometry/bezier.ts';
import type { Point } from '../geometry/outline.ts';

const pixelsPerMillimeter = 40;
const root: Point = [440, 520];

/** Millimeters along plate A and along plate B, to the picture, whose y runs down. */
const inPicture = ([along, up]: Point): Point => [
  root[0] + along * pixelsPerMillimeter,
  root[1] - up * pixelsPerMillimeter,
];

const legA = 8.2;
const legB = 7.6;
const bulge = 0.7;
const faceWidth = Math.hypot(legA, legB);
const outward: Point = [legB / faceWidth, legA / faceWidth];
const face = bow([legA, 0], [0, legB], [bulge * outward[0], bulge * outward[1]]);
const fusion: Cubic = [
  [legA, 0],
  [-1.5, -3],
  [-2.75, -1.25],
  [0, legB],
];

const along = (curve: Cubic, count: number): Point[] =>
  Array.from({ length: count }, (_, i) => inPicture(bezierPoint(curve, (i + 1) / (count + 1))));

/** What there is to draw, in pixels of the picture. */
export const filletPicture = {
  width: 1040,
  height: 1010,
  plate: 9.5 * pixelsPerMillimeter,
  /** The rule lies along the bottom; one tick a millimeter. */
  rule: { from: [120, 945] as Point, millimeters: 20, step: pixelsPerMillimeter },
  root,
  toeA: inPicture([legA, 0]),
  toeB: inPicture([0, legB]),
  face: along(face, 40),
  fusion: along(fusion, 60),
  /** Where each pass melted into the one before. */
  passLines: [
    [inPicture([5.3, -0.45]), inPicture([3.4, 2.9]), inPicture([-0.5, 4])],
    [inPicture([3.15, 2.5]), inPicture([3.4, 3.6]), inPicture([4.3, 4.6])],
  ] as const,
};

/** Marks as a careful eye would place them. */
export const filletSampleMarks = {
  ends: [filletPicture.rule.from, [120 + 20 * pixelsPerMillimeter, 945] as Point],
  root: [root],
  toeA: [filletPicture.toeA],
  toeB: [filletPicture.toeB],
  face: along(face, 7),
  fusion: along(fusion, 11),
  plateA: [inPicture([9.6, 0]), inPicture([13.6, 0])],
  plateB: [inPicture([0, 9]), inPicture([0, 12.4])],
  passes: [inPicture([1.2, 1.3]), inPicture([5, 1.6]), inPicture([1.5, 5])],
} as const;

/** Millimeters between the two marked ends of the rule. */
export const filletSampleLength = 20;

/**
 * True sizes in millimeters, square millimeters, degrees and percent. The areas follow from the
 * curves: a parabola holds two thirds of its box, and a Bézier curve's area is a sum over its corners.
 */
export const filletTruth = (() => {
  const depositArea = (legA * legB) / 2 + (2 / 3) * faceWidth * bulge;
  const meltedArea = -sweptArea(fusion);
  return {
    legA,
    legB,
    angle: 90,
    faceWidth,
    throat: (legA * legB) / faceWidth,
    rise: bulge,
    depositArea,
    meltedArea,
    dilution: (100 * meltedArea) / (meltedArea + depositArea),
  };
})();
