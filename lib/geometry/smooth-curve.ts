import type { Point } from './outline.ts';

/** Chords between two neighboring marks. */
export const chordsBetween = 8;

/**
 * A smooth curve through marked points, as short chords: cubic pieces whose slope at each point is
 * that of the parabola through it and its neighbors. Straight chords from mark to mark would lose
 * the metal between them.
 */
export function smoothCurve(marks: readonly Point[]): Point[] {
  const points = marks.filter(
    ([x, y], i) => i === 0 || x !== marks[i - 1]?.[0] || y !== marks[i - 1]?.[1],
  );
  if (points.length < 3) return points;
  const gaps = points.slice(1).map((point, i) => distance(points[i] as Point, point));
  const slopes = slopesAt(points, gaps);
  const curve: Point[] = [points[0] as Point];
  for (const [i, gap] of gaps.entries())
    for (let step = 1; step <= chordsBetween; step++)
      curve.push(
        between(
          [points[i] as Point, points[i + 1] as Point],
          [slopes[i] as Point, slopes[i + 1] as Point],
          gap,
          step / chordsBetween,
        ),
      );
  return curve;
}

export const distance = ([ax, ay]: Point, [bx, by]: Point): number => Math.hypot(bx - ax, by - ay);

function slopesAt(points: readonly Point[], gaps: readonly number[]): Point[] {
  const chord = (i: number): Point => {
    const [ax, ay] = points[i] as Point;
    const [bx, by] = points[i + 1] as Point;
    const gap = gaps[i] as number;
    return [(bx - ax) / gap, (by - ay) / gap];
  };
  const inner = (i: number): Point => {
    const [before, after] = [gaps[i - 1] as number, gaps[i] as number];
    const share = before / (before + after);
    return mixed(chord(i - 1), chord(i), share);
  };
  const last = points.length - 1;
  return points.map((_, i): Point => {
    if (i === 0) return mixed(inner(1), chord(0), 2);
    if (i === last) return mixed(inner(last - 1), chord(last - 1), 2);
    return inner(i);
  });
}

const mixed = ([ax, ay]: Point, [bx, by]: Point, share: number): Point => [
  ax + share * (bx - ax),
  ay + share * (by - ay),
];

function between(ends: [Point, Point], slopes: [Point, Point], gap: number, t: number): Point {
  const back = 1 - t;
  const at = (axis: 0 | 1) =>
    ends[0][axis] * (1 + 2 * t) * back ** 2 +
    ends[1][axis] * t ** 2 * (3 - 2 * t) +
    gap * t * back * (slopes[0][axis] * back - slopes[1][axis] * t);
  return [at(0), at(1)];
}
