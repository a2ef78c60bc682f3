import type { Point } from './outline.ts';
import { distance } from './smooth-curve.ts';

/**
 * Puts a new mark among those of a line, where the line grows least: people go back to add a mark
 * where a curve bends. The ends are fixed; a new mark stands between them.
 * @returns the place of the new mark in the new list, and that list
 */
export function insertedAlong(
  marks: readonly Point[],
  [from, to]: readonly [Point, Point],
  mark: Point,
): { at: number; marks: readonly Point[] } {
  const line = [from, ...marks, to];
  let [at, least] = [0, Number.POSITIVE_INFINITY];
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1] as Point, line[i] as Point];
    const growth = distance(a, mark) + distance(mark, b) - distance(a, b);
    if (growth < least) [at, least] = [i - 1, growth];
  }
  return { at, marks: marks.toSpliced(at, 0, mark) };
}
