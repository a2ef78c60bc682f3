/**
 * One-dimensional cutting stock, every bar alike: best-fit decreasing, then a bounded search.
 * Lengths are whole numbers of any one unit, so that sums are exact.
 */
export interface CutBars {
  /** The lengths cut from each bar, longest first. */
  bars: number[][];
  lowerBound: number;
}

/** The least bars that any plan needs: bound L2 of Martello and Toth (1990), never below the sum bound. */
export function leastBars(lengths: readonly number[], capacity: number): number {
  let least = Math.ceil(lengths.reduce((sum, length) => sum + length, 0) / capacity);
  for (const small of new Set([0, ...lengths.filter((length) => 2 * length <= capacity)])) {
    const alone = lengths.filter((length) => length > capacity - small);
    const half = lengths.filter((length) => length <= capacity - small && 2 * length > capacity);
    const rest = lengths.filter((length) => 2 * length <= capacity && length >= small);
    const total = (list: number[]) => list.reduce((sum, length) => sum + length, 0);
    const spare = half.length * capacity - total(half);
    const more = Math.max(0, Math.ceil((total(rest) - spare) / capacity));
    least = Math.max(least, alone.length + half.length + more);
  }
  return least;
}

/** Each piece, longest first, into the bar that it leaves the least of. */
function bestFit(sorted: readonly number[], capacity: number): number[][] {
  const bars: { left: number; pieces: number[] }[] = [];
  for (const length of sorted) {
    let best: (typeof bars)[number] | undefined;
    for (const bar of bars) if (bar.left >= length && (!best || bar.left < best.left)) best = bar;
    if (!best) {
      best = { left: capacity, pieces: [] };
      bars.push(best);
    }
    best.left -= length;
    best.pieces.push(length);
  }
  return bars.map((bar) => bar.pieces);
}

/** Cuts `lengths`, none longer than `capacity`; stops searching after `steps` placements. */
export function cutBars(lengths: readonly number[], capacity: number, steps = 4000): CutBars {
  const sorted = [...lengths].sort((a, b) => b - a);
  const lowerBound = leastBars(sorted, capacity);
  let best = bestFit(sorted, capacity);
  const left: number[] = [];
  const pieces: number[][] = [];
  let taken = 0;
  const place = (index: number): void => {
    if (best.length === lowerBound || taken >= steps || pieces.length >= best.length) return;
    const length = sorted[index];
    if (length === undefined) {
      best = pieces.map((bar) => [...bar]);
      return;
    }
    taken += 1;
    // Two bars with the same length left lead to the same plans.
    const choices = [...new Set(left.filter((rest) => rest >= length))].sort((a, b) => a - b);
    for (const rest of choices) {
      const bar = left.indexOf(rest);
      left[bar] = rest - length;
      pieces[bar]?.push(length);
      place(index + 1);
      pieces[bar]?.pop();
      left[bar] = rest;
    }
    if (pieces.length + 1 < best.length) {
      left.push(capacity - length);
      pieces.push([length]);
      place(index + 1);
      left.pop();
      pieces.pop();
    }
  };
  place(0);
  return { bars: best, lowerBound };
}
