/** Made-up fillet sections whose true sizes are known, for tests of what is read from their marks. */
import type { FilletMarks } from '../../../lib/geometry/etched-fillet.ts';
import type { Point } from '../../../lib/geometry/outline.ts';
import { areaOf } from '../geometry/polygon-oracle.ts';

export const along = ([ax, ay]: Point, [bx, by]: Point, share: number): Point => [
  ax + share * (bx - ax),
  ay + share * (by - ay),
];

/** A turn, a shift and, if wanted, a mirroring. */
export function placing(turn: number, mirror: boolean) {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return ([x, y]: Point): Point => {
    const up = mirror ? -y : y;
    return [700 + x * cos - up * sin, 500 + x * sin + up * cos];
  };
}

export const mapped = (marks: FilletMarks, place: (point: Point) => Point): FilletMarks => ({
  root: place(marks.root),
  toeA: place(marks.toeA),
  toeB: place(marks.toeB),
  face: marks.face.map(place),
  fusion: marks.fusion.map(place),
  plateA: marks.plateA.map(place),
  plateB: marks.plateB.map(place),
});

/**
 * A fillet with a parabolic face and a fusion line that is a cubic Bézier curve behind the root,
 * its marks without any error, and what is true of it.
 */
export function randomSection(random: () => number) {
  const between = (low: number, high: number) => low + (high - low) * random();
  const angle = (between(60, 120) * Math.PI) / 180;
  const legA = between(200, 500);
  const legB = legA * between(0.7, 1.4);
  const plateB: Point = [Math.cos(angle), Math.sin(angle)];
  const halving: Point = [Math.cos(angle / 2), Math.sin(angle / 2)];
  const toeA: Point = [legA, 0];
  const toeB: Point = [legB * plateB[0], legB * plateB[1]];
  const faceWidth = Math.hypot(toeB[0] - legA, toeB[1]);
  const outward: Point = [toeB[1] / faceWidth, (legA - toeB[0]) / faceWidth];
  const bulge = faceWidth * between(-0.08, 0.12);
  const faceAt = (t: number): Point => {
    const [x, y] = along(toeA, toeB, t);
    const rise = 4 * bulge * t * (1 - t);
    return [x + rise * outward[0], y + rise * outward[1]];
  };
  const back = between(0, 60) + (0.2 / 0.75) * (legA + legB) * Math.cos(angle / 2);
  const control = (toe: Point, depth: number, side: Point): Point => [
    0.2 * toe[0] - back * halving[0] + depth * side[0],
    0.2 * toe[1] - back * halving[1] + depth * side[1],
  ];
  const controls: [Point, Point] = [
    control(toeA, between(20, 70), [0, -1]),
    control(toeB, between(20, 70), [-plateB[1], plateB[0]]),
  ];
  const fusionAt = (t: number): Point => {
    const u = 1 - t;
    const at = (axis: 0 | 1) =>
      u ** 3 * toeA[axis] +
      3 * u * u * t * controls[0][axis] +
      3 * u * t * t * controls[1][axis] +
      t ** 3 * toeB[axis];
    return [at(0), at(1)];
  };
  const inside = (count: number) => Array.from({ length: count }, (_, i) => (i + 1) / (count + 1));
  const marks: FilletMarks = {
    root: [0, 0],
    toeA,
    toeB,
    face: inside(7).map(faceAt),
    fusion: inside(11).map(fusionAt),
    plateA: [1.1, 1.4, 1.8].map((reach): Point => [legA * reach, 0]),
    plateB: [1.1, 1.4, 1.8].map((reach): Point => [toeB[0] * reach, toeB[1] * reach]),
  };
  let [low, high] = [0, 1];
  for (let i = 0; i < 60; i++) {
    const [x, y] = fusionAt((low + high) / 2);
    if (halving[0] * y - halving[1] * x < 0) low = (low + high) / 2;
    else high = (low + high) / 2;
  }
  const deepest = fusionAt(low);
  const fine = inside(600);
  /** Deepest behind plate A's face, and behind plate B's, from the middle of the leg outward. */
  const depths = fine.map(fusionAt).reduce(
    (most, [x, y]) => ({
      fusionA: x >= legA / 2 ? Math.max(most.fusionA, -y) : most.fusionA,
      fusionB:
        x * plateB[0] + y * plateB[1] >= legB / 2
          ? Math.max(most.fusionB, y * plateB[0] - x * plateB[1])
          : most.fusionB,
    }),
    { fusionA: 0, fusionB: 0 },
  );
  const depositArea = (legA * legB * Math.sin(angle)) / 2 + (2 / 3) * faceWidth * bulge;
  const meltedArea = areaOf([[0, 0], toeA, ...fine.map(fusionAt), toeB]);
  const altitude = (legA * legB * Math.sin(angle)) / faceWidth;
  const footOnFace = legA > legB * Math.cos(angle) && legB > legA * Math.cos(angle);
  const truth = {
    legA,
    legB,
    angle: (angle * 180) / Math.PI,
    faceWidth,
    throat: (footOnFace ? altitude : Math.min(legA, legB)) + Math.min(0, bulge),
    actualThroat: Math.min(
      ...[toeA, ...fine.map(faceAt), toeB].map(([x, y]) =>
        Math.hypot(x - deepest[0], y - deepest[1]),
      ),
    ),
    rise: Math.max(0, bulge),
    hollow: Math.max(0, -bulge),
    penetration: -(deepest[0] * halving[0] + deepest[1] * halving[1]),
    ...depths,
    depositArea,
    meltedArea,
    dilution: (100 * meltedArea) / (meltedArea + depositArea),
  };
  return { marks, truth };
}
