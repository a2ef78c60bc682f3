/** Curves through marks on a picture, as short chords. */
import type { Point } from './outline.ts';

/** Chords between two neighboring marks. */
const chordsBetween = 8;

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
  for (let i = 0; i < gaps.length; i++) {
    const gap = gaps[i] as number;
    const [from, to] = [points[i] as Point, points[i + 1] as Point];
    const [leave, arrive] = [slopes[i] as Point, slopes[i + 1] as Point];
    for (let part = 0; part < chordsBetween; part++) {
      const mix = mixes[part] as (typeof mixes)[number];
      const [leaving, arriving] = [gap * mix.leaving, gap * mix.arriving];
      curve.push([
        from[0] * mix.start + to[0] * mix.end + leave[0] * leaving - arrive[0] * arriving,
        from[1] * mix.start + to[1] * mix.end + leave[1] * leaving - arrive[1] * arriving,
      ]);
    }
  }
  return curve;
}

/** The part of such a curve from its first inner mark to its last; all of it where there is no inner mark. */
export function betweenMarks(curve: readonly Point[]): readonly Point[] {
  const inner = curve.slice(chordsBetween, -chordsBetween);
  return inner.length > 0 ? inner : curve;
}

/** Much faster than Math.hypot, whose care for huge numbers no drawing needs. */
export const distance = ([ax, ay]: Point, [bx, by]: Point): number =>
  Math.sqrt((bx - ax) ** 2 + (by - ay) ** 2);

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

/** How much of each end and of each end's slope is in a chord's end: cubic Hermite polynomials. */
const mixes = Array.from({ length: chordsBetween }, (_, i) => {
  const t = (i + 1) / chordsBetween;
  const back = 1 - t;
  return {
    start: (1 + 2 * t) * back ** 2,
    end: t ** 2 * (3 - 2 * t),
    leaving: t * back ** 2,
    arriving: t ** 2 * back,
  };
});
