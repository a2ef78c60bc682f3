/** Straight things through marks on a picture: their direction, which side a point lies on, the nearest place. */
import type { Outline, Point } from './outline.ts';
import { distance } from './smooth-curve.ts';

/** Through two points. */
export type Line = readonly [Point, Point];

/** The way from b to a. */
export const minus = ([ax, ay]: Point, [bx, by]: Point): Point => [ax - bx, ay - by];
/** How far a goes along b, times the length of b. */
export const dot = ([ax, ay]: Point, [bx, by]: Point): number => ax * bx + ay * by;
/** The same direction, of length 1. Not for a point at the origin, which has none. */
export const unit = ([x, y]: Point): Point => {
  const length = Math.sqrt(x * x + y * y);
  return [x / length, y / length];
};

/** Direction of the line that fits points with least squared distance. */
export function mainAxis(points: readonly Point[]): Point {
  const [middleX, middleY] = middleOf(points);
  let [xx, xy, yy] = [0, 0, 0];
  for (const [x, y] of points) {
    xx += (x - middleX) ** 2;
    xy += (x - middleX) * (y - middleY);
    yy += (y - middleY) ** 2;
  }
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  return [Math.cos(angle), Math.sin(angle)];
}

/** The mean of the points, of which there must be one at least. */
export function middleOf(points: readonly Point[]): Point {
  let [x, y] = [0, 0];
  for (const point of points) {
    x += point[0];
    y += point[1];
  }
  return [x / points.length, y / points.length];
}

/** A line from a to b, and how far a point lies to the left of it. */
export function straight(a: Point, b: Point) {
  const [x, y] = unit(minus(b, a));
  return { sideOf: (point: Point) => x * (point[1] - a[1]) - y * (point[0] - a[0]) };
}

/** Marks of a curve, set from either end, in the order from one end to the other. */
export function inOrder(points: readonly Point[], from: Point, to: Point): readonly Point[] {
  if (points.length === 0) return points;
  const [first, last] = [points[0], points.at(-1)] as [Point, Point];
  const forward = distance(first, from) + distance(last, to);
  const backward = distance(first, to) + distance(last, from);
  return forward <= backward ? points : [...points].reverse();
}

/**
 * From a point to a curve of short chords. Only the chords beside the nearest corner are looked at, so
 * that no single chord may run on past where others bend back.
 */
export function distanceToCurve(point: Point, curve: Outline): number {
  const x = point[0];
  const y = point[1];
  let nearest = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < curve.length; i++) {
    const corner = curve[i] as Point;
    const away = (corner[0] - x) ** 2 + (corner[1] - y) ** 2;
    if (away < least) [nearest, least] = [i, away];
  }
  for (const i of [nearest, nearest + 1]) {
    const [from, to] = [curve[i - 1], curve[i]];
    if (from && to) least = Math.min(least, squaredToChord(point, from, to));
  }
  return Math.sqrt(least);
}

function squaredToChord([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const [dx, dy] = [bx - ax, by - ay];
  const under = dx * dx + dy * dy;
  const share = under === 0 ? 0 : ((x - ax) * dx + (y - ay) * dy) / under;
  const along = Math.max(0, Math.min(1, share));
  return (ax + along * dx - x) ** 2 + (ay + along * dy - y) ** 2;
}

/** The part of a curve where `along` is not below 0, cut exactly where it passes 0. */
export function keptWhere(curve: Outline, along: (point: Point) => number): Outline {
  const kept: Point[] = [];
  let before: Point | undefined;
  let was = 0;
  for (const point of curve) {
    const here = along(point);
    if (before && was * here < 0) {
      const share = was / (was - here);
      kept.push([
        before[0] + share * (point[0] - before[0]),
        before[1] + share * (point[1] - before[1]),
      ]);
    }
    if (here >= 0) kept.push(point);
    [before, was] = [point, here];
  }
  return kept;
}
