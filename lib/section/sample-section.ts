/**
 * A drawn section of a fillet whose true sizes are known, for learning to measure: a tee of plates
 * at a right angle, a face that bulges as a parabola, and a fusion line that is a cubic Bézier curve.
 */
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
const controls: readonly [Point, Point, Point, Point] = [
  [legA, 0],
  [-1.5, -3],
  [-2.75, -1.25],
  [0, legB],
];

const facePoint = (t: number): Point => {
  const rise = 4 * bulge * t * (1 - t);
  return [legA * (1 - t) + rise * outward[0], legB * t + rise * outward[1]];
};

const fusionPoint = (t: number): Point => {
  const back = 1 - t;
  const at = (axis: 0 | 1) =>
    back ** 3 * controls[0][axis] +
    3 * back ** 2 * t * controls[1][axis] +
    3 * back * t ** 2 * controls[2][axis] +
    t ** 3 * controls[3][axis];
  return [at(0), at(1)];
};

const shares = (count: number) => Array.from({ length: count }, (_, i) => (i + 1) / (count + 1));

/** What there is to draw, in pixels of the picture. */
export const samplePicture = {
  width: 1040,
  height: 1010,
  plate: 9.5 * pixelsPerMillimeter,
  /** The rule lies along the bottom; one tick a millimeter. */
  rule: { from: [120, 945] as Point, millimeters: 20, step: pixelsPerMillimeter },
  root,
  toeA: inPicture([legA, 0]),
  toeB: inPicture([0, legB]),
  face: shares(40).map((t) => inPicture(facePoint(t))),
  fusion: shares(60).map((t) => inPicture(fusionPoint(t))),
  /** Where each pass melted into the one before. */
  passLines: [
    [inPicture([5.3, -0.45]), inPicture([3.4, 2.9]), inPicture([-0.5, 4])],
    [inPicture([3.15, 2.5]), inPicture([3.4, 3.6]), inPicture([4.3, 4.6])],
  ] as const,
};

/** Marks as a careful eye would place them. */
export const sampleMarks = {
  ends: [samplePicture.rule.from, [120 + 20 * pixelsPerMillimeter, 945] as Point],
  root: [root],
  toeA: [samplePicture.toeA],
  toeB: [samplePicture.toeB],
  face: shares(7).map((t) => inPicture(facePoint(t))),
  fusion: shares(11).map((t) => inPicture(fusionPoint(t))),
  plateA: [inPicture([9.6, 0]), inPicture([13.6, 0])],
  plateB: [inPicture([0, 9]), inPicture([0, 12.4])],
  passes: [inPicture([1.2, 1.3]), inPicture([5, 1.6]), inPicture([1.5, 5])],
} as const;

/** Millimeters between the two marked ends of the rule. */
export const sampleLength = 20;

/**
 * True sizes in millimeters, square millimeters, degrees and percent. The areas follow from the
 * curves: a parabola holds two thirds of its box, and a Bézier curve's area is a sum over its corners.
 */
export const sampleTruth = (() => {
  const depositArea = (legA * legB) / 2 + (2 / 3) * faceWidth * bulge;
  const cross = (i: number, j: number) => {
    const [a, b] = [controls[i] as Point, controls[j] as Point];
    return a[0] * b[1] - a[1] * b[0];
  };
  // Twice the area between a cubic and its origin is a fixed mix of its corners' cross products.
  const meltedArea = -(
    (6 * cross(0, 1) +
      3 * cross(0, 2) +
      cross(0, 3) +
      3 * cross(1, 2) +
      3 * cross(1, 3) +
      6 * cross(2, 3)) /
    20
  );
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
