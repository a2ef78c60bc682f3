/**
 * Two quick ways to cut bars, both as patterns with the number of bars that are cut alike, so that
 * thousands of pieces cost no more than their different lengths.
 */
import type { Alike } from './least-bars.ts';

/** Bars that are cut alike: what comes from each, longest first. */
export interface Pattern {
  bars: number;
  pieces: Alike[];
}

/** Each bar takes the longest pieces that still fit: first-fit decreasing, bar by bar. */
export const longestFirst = (falling: readonly Alike[], capacity: number): Pattern[] =>
  barByBar(falling, (left) => greedy(left, capacity));

/**
 * Each bar takes the longest piece and beside it what fills the bar best: minimum bin slack (Gupta
 * and Ho 1999). Looks at no more than `looks` ways for all bars, then goes on with the best so far.
 */
export function fullestBars(
  falling: readonly Alike[],
  capacity: number,
  looks = 60_000,
): Pattern[] {
  let budget = looks;
  return barByBar(falling, (left) => {
    let best = greedy(left, capacity);
    let least = capacity - lengthOf(best);
    const share = Math.max(50, Math.floor(budget / 8));
    const until = Math.max(0, budget - share);
    const first = left[0] as Alike;
    const taken: Alike[] = [];
    const fill = (place: number, room: number): void => {
      if (room < least) {
        least = room;
        best = taken.map((it) => ({ ...it }));
      }
      if (least === 0 || budget <= until) return;
      for (let at = place; at < left.length; at++) {
        const { length, count } = left[at] as Alike;
        if (length > room) continue;
        for (let many = Math.min(count, Math.floor(room / length)); many > 0; many--) {
          budget -= 1;
          taken.push({ length, count: many });
          fill(at + 1, room - many * length);
          taken.pop();
          if (least === 0 || budget <= until) return;
        }
      }
    };
    const most = Math.min(first.count, Math.floor(capacity / first.length));
    for (let many = most; many > 0 && least > 0 && budget > until; many--) {
      taken.push({ length: first.length, count: many });
      fill(1, capacity - many * first.length);
      taken.pop();
    }
    return best;
  });
}

/** Cuts pattern after pattern, each as often as the pieces last. */
function barByBar(falling: readonly Alike[], pick: (left: readonly Alike[]) => Alike[]): Pattern[] {
  let left = falling;
  const patterns: Pattern[] = [];
  while (left.length > 0) {
    const pieces = pick(left);
    const need = new Map(pieces.map(({ length, count }) => [length, count]));
    const bars = Math.min(
      ...left.flatMap(({ length, count }) => {
        const each = need.get(length);
        return each ? [Math.floor(count / each)] : [];
      }),
    );
    patterns.push({ bars, pieces });
    left = left
      .map(({ length, count }) => ({ length, count: count - bars * (need.get(length) ?? 0) }))
      .filter(({ count }) => count > 0);
  }
  return patterns;
}

function greedy(left: readonly Alike[], capacity: number): Alike[] {
  let room = capacity;
  return left.flatMap(({ length, count }) => {
    const many = Math.min(count, Math.floor(room / length));
    room -= many * length;
    return many > 0 ? [{ length, count: many }] : [];
  });
}

const lengthOf = (pieces: readonly Alike[]): number =>
  pieces.reduce((sum, { length, count }) => sum + length * count, 0);
