import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { insertedAlong } from '../../../lib/geometry/mark-order.ts';
import type { Point } from '../../../lib/geometry/outline.ts';
import {
  markCounts,
  noMarks,
  type Placed,
  withMark,
  withoutMark,
} from '../../../lib/section/section-marks.ts';

const onArc = (share: number): Point => [
  100 * Math.cos(Math.PI * share),
  100 * Math.sin(Math.PI * share),
];

describe('insertedAlong', () => {
  it('brings marks of a curve into its order, in whatever order they were set', () => {
    const shares = [0.1, 0.2, 0.35, 0.5, 0.6, 0.75, 0.9];
    fc.assert(
      fc.property(fc.shuffledSubarray(shares, { minLength: shares.length }), (order) => {
        let marks: readonly Point[] = [];
        for (const share of order)
          ({ marks } = insertedAlong(marks, [onArc(0), onArc(1)], onArc(share)));
        expect(marks).toEqual(shares.map(onArc));
      }),
    );
  });
});

describe('withMark', () => {
  const all = (placed: Placed) => Object.values(placed).flat().length;

  it('moves the one root instead of setting a second', () => {
    const first = withMark(noMarks, 'root', [1, 1]);
    const second = withMark(first.placed, 'root', [5, 5]);
    expect(second.placed.root).toEqual([[5, 5]]);
    expect(second.at).toBe(0);
  });

  it('sets no more marks than there is room for, and says so', () => {
    let placed = noMarks;
    for (let i = 0; i < markCounts.corners.most; i++)
      ({ placed } = withMark(placed, 'corners', [i, i]));
    expect(withMark(placed, 'corners', [9, 9])).toEqual({ placed, at: -1 });
  });

  it('puts a mark of the face in its place between the toes', () => {
    let placed: Placed = { ...noMarks, toeA: [[100, 0]], toeB: [[0, 100]] };
    for (const point of [
      [80, 20],
      [20, 80],
    ] as const)
      ({ placed } = withMark(placed, 'face', point));
    const { placed: now, at } = withMark(placed, 'face', [50, 50]);
    expect(at).toBe(1);
    expect(now.face).toEqual([
      [80, 20],
      [50, 50],
      [20, 80],
    ]);
  });

  it('is undone by taking the mark away', () => {
    const { placed, at } = withMark(noMarks, 'passes', [3, 4]);
    expect(all(placed)).toBe(1);
    expect(withoutMark(placed, 'passes', at)).toEqual(noMarks);
  });
});
