/** The marks that a reader places on a picture of a section: how many of each, and in which order. */
import { insertedAlong } from '../geometry/mark-order.ts';
import type { Point } from '../geometry/outline.ts';

export const markNames = [
  'ends',
  'corners',
  'root',
  'toeA',
  'toeB',
  'rootA',
  'rootB',
  'face',
  'rootBead',
  'fusion',
  'fusionA',
  'fusionB',
  'edgeA',
  'edgeB',
  'plateA',
  'plateB',
  'backA',
  'backB',
  'undercutA',
  'undercutB',
  'passes',
] as const;
export type MarkName = (typeof markNames)[number];
export type Placed = Readonly<Record<MarkName, readonly Point[]>>;

/** How many marks of a kind are needed before it says anything, and how many there may be. */
export const markCounts: Readonly<Record<MarkName, { least: number; most: number }>> = {
  ends: { least: 2, most: 2 },
  corners: { least: 4, most: 4 },
  root: { least: 1, most: 1 },
  toeA: { least: 1, most: 1 },
  toeB: { least: 1, most: 1 },
  rootA: { least: 1, most: 1 },
  rootB: { least: 1, most: 1 },
  face: { least: 3, most: 30 },
  rootBead: { least: 1, most: 30 },
  fusion: { least: 5, most: 30 },
  fusionA: { least: 3, most: 30 },
  fusionB: { least: 3, most: 30 },
  edgeA: { least: 2, most: 4 },
  edgeB: { least: 2, most: 4 },
  plateA: { least: 2, most: 6 },
  plateB: { least: 2, most: 6 },
  backA: { least: 2, most: 6 },
  backB: { least: 2, most: 6 },
  undercutA: { least: 1, most: 1 },
  undercutB: { least: 1, most: 1 },
  passes: { least: 1, most: 60 },
};

/** Curves, and the marks between which each of them runs. */
const curveEnds: Partial<Record<MarkName, readonly [MarkName, MarkName]>> = {
  face: ['toeA', 'toeB'],
  fusion: ['toeA', 'toeB'],
  rootBead: ['rootA', 'rootB'],
  fusionA: ['toeA', 'rootA'],
  fusionB: ['toeB', 'rootB'],
  edgeA: ['toeA', 'rootA'],
  edgeB: ['toeB', 'rootB'],
};

/** A picture on which nothing is marked yet. */
export const noMarks: Placed = Object.fromEntries(
  markNames.map((name) => [name, []]),
) as unknown as Placed;

/** Whether enough marks of a kind are there to count. */
export const isPlaced = (placed: Placed, name: MarkName): boolean =>
  placed[name].length >= markCounts[name].least;

/**
 * The marks with one more. Where only one may stand, it moves there; where all stand, nothing
 * changes. Marks of a curve take their place along it.
 * @returns the marks, and the place of the new one; -1 when there was no room
 */
export function withMark(
  placed: Placed,
  name: MarkName,
  point: Point,
): { placed: Placed; at: number } {
  const marks = placed[name];
  const { most } = markCounts[name];
  if (most === 1) return { placed: { ...placed, [name]: [point] }, at: 0 };
  if (marks.length >= most) return { placed, at: -1 };
  const [from, to] = curveEnds[name]?.map((end) => placed[end][0]) ?? [];
  if (from && to) {
    const inserted = insertedAlong(marks, [from, to], point);
    return { placed: { ...placed, [name]: inserted.marks }, at: inserted.at };
  }
  return { placed: { ...placed, [name]: [...marks, point] }, at: marks.length };
}

/** The mark at place `at` of its kind, moved. */
export const withMovedMark = (placed: Placed, name: MarkName, at: number, to: Point): Placed => ({
  ...placed,
  [name]: placed[name].with(at, to),
});

/** The mark at place `at` of its kind, taken off. */
export const withoutMark = (placed: Placed, name: MarkName, at: number): Placed => ({
  ...placed,
  [name]: placed[name].toSpliced(at, 1),
});
