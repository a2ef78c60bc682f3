/**
 * Divides a layer into beads of equal area. The first bead lies at the side where x is smallest;
 * each next one laps onto the flank of the bead before.
 *
 * A flank stands at 45° to the layer. In a horizontal fillet that makes it level: each bead is the
 * shelf on which the next one rests. A layer of two beads over a root pass then has its first bead
 * over 68 percent of the root pass, the two thirds that the trade aims at.
 */
import { areaUnder, faceHeight, facePoints, type LayerFace } from './layer-face.ts';
import type { Outline, Point } from './outline.ts';

export interface Layer {
  lower: LayerFace;
  upper: LayerFace;
  /** Where both side walls change direction between the two faces, as at the top of a root face. */
  bend?: { halfWidth: number; height: number } | undefined;
}

export interface Bead {
  outline: Outline;
  area: number;
  /** Where it begins and ends on the upper face. */
  top: readonly [from: number, to: number];
  /** Where it begins and ends on the lower face. */
  foot: readonly [from: number, to: number];
  /** Length of its flank under the next bead; 0 when it is the last of its layer. */
  flank: number;
}

/** @returns `count` beads in the order they are laid, areas in the square of the layer’s unit */
export function layerBeads(layer: Layer, count: number): Bead[] {
  const { lower, upper } = layer;
  const area =
    2 *
    areaBefore(layer, [
      [0, faceHeight(lower, 0)],
      [0, faceHeight(upper, 0)],
    ]);
  const cuts = [side(layer, -1)];
  for (let i = 1; i < count; i++) cuts.push(cutAt(layer, count, (area * i) / count));
  cuts.push(side(layer, 1));
  return cuts.slice(1).map((after, i): Bead => {
    const before = cuts[i] as Point[];
    const foot = [footOf(before)[0], footOf(after)[0]] as const;
    const top = [topOf(before)[0], topOf(after)[0]] as const;
    const outline = withoutRepeats([
      ...facePoints(lower, ...foot),
      ...after.slice(1, -1),
      ...facePoints(upper, ...top).reverse(),
      ...before.slice(1, -1).reverse(),
    ]);
    return {
      outline,
      area: area / count,
      top,
      foot,
      flank: i + 1 < count ? lengthOf(after) : 0,
    };
  });
}

const footOf = (cut: Point[]): Point => cut[0] as Point;
const topOf = (cut: Point[]): Point => cut.at(-1) as Point;

/** A side wall from foot to top. */
function side({ lower, upper, bend }: Layer, sign: 1 | -1): Point[] {
  return [
    [sign * lower.halfWidth, lower.height],
    ...(bend ? [[sign * bend.halfWidth, bend.height] as Point] : []),
    [sign * upper.halfWidth, upper.height],
  ];
}

/** The flank that has `wanted` area before it, found by halving. */
function cutAt(layer: Layer, count: number, wanted: number): Point[] {
  const step = (layer.lower.halfWidth + layer.upper.halfWidth) / count;
  const lean = Math.min(layer.upper.height - layer.lower.height, step);
  let low = -layer.upper.halfWidth;
  let high = layer.upper.halfWidth;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (areaBefore(layer, flankAt(layer, middle, lean)) < wanted) low = middle;
    else high = middle;
  }
  return flankAt(layer, (low + high) / 2, lean);
}

/** A flank that ends at x on the upper face; it follows the wall where it would leave the joint. */
function flankAt({ lower, upper, bend }: Layer, x: number, lean: number): Point[] {
  const foot = Math.max(-lower.halfWidth, Math.min(lower.halfWidth, x + lean));
  const from: Point = [foot, faceHeight(lower, foot)];
  const to: Point = [x, faceHeight(upper, x)];
  if (!bend) return [from, to];
  const share = (bend.height - from[1]) / (to[1] - from[1]);
  const crossing = from[0] + share * (to[0] - from[0]);
  if (Math.abs(crossing) <= bend.halfWidth) return [from, to];
  return [from, [Math.sign(crossing) * bend.halfWidth, bend.height], to];
}

/** Area of the layer before a cut: under the upper face, less what lies under the other edges. */
function areaBefore(layer: Layer, cut: Point[]): number {
  const underFaces = areaUnder(layer.upper, topOf(cut)[0]) - areaUnder(layer.lower, footOf(cut)[0]);
  return underFaces + areaUnderLine(side(layer, -1)) - areaUnderLine(cut);
}

function areaUnderLine(line: Point[]): number {
  let sum = 0;
  for (let i = 1; i < line.length; i++) {
    const [x, y] = line[i - 1] as Point;
    const [nextX, nextY] = line[i] as Point;
    sum += ((nextX - x) * (y + nextY)) / 2;
  }
  return sum;
}

function lengthOf(line: Point[]): number {
  let sum = 0;
  for (let i = 1; i < line.length; i++) {
    const [x, y] = line[i - 1] as Point;
    const [nextX, nextY] = line[i] as Point;
    sum += Math.hypot(nextX - x, nextY - y);
  }
  return sum;
}

const withoutRepeats = (points: Point[]): Point[] =>
  points.filter(([x, y], i) => {
    const [lastX, lastY] = points.at(i - 1) as Point;
    return x !== lastX || y !== lastY;
  });
