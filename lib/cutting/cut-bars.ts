/**
 * One-dimensional cutting stock, every bar alike: two quick plans, the better of them searched on
 * within a step limit. Lengths are whole numbers of any one unit, so that sums are exact.
 */
import { fullestBars, longestFirst, type Pattern } from './cut-patterns.ts';
import { type Alike, leastBars } from './least-bars.ts';
import { searchBars } from './search-bars.ts';

export interface CutBars {
  /** Bars that are cut alike stand together. */
  patterns: Pattern[];
  /** How many bars they are. */
  bars: number;
  /** No plan needs fewer. */
  lowerBound: number;
}

/** Longer lists are left as the quick plans cut them: a search would not get far in its time. */
const mostSearched = 1000;

/** Cuts `pieces`, none longer than `capacity`. `looks` bounds the search; see `searchBars`. */
export function cutBars(pieces: readonly Alike[], capacity: number, looks = 400_000): CutBars {
  const falling = merged(pieces);
  const lowerBound = leastBars(falling, capacity);
  let patterns = longestFirst(falling, capacity);
  let bars = barsOf(patterns);
  if (bars > lowerBound) {
    const fuller = fullestBars(falling, capacity);
    if (barsOf(fuller) < bars) patterns = fuller;
    bars = barsOf(patterns);
  }
  const many = falling.reduce((sum, { count }) => sum + count, 0);
  if (bars > lowerBound && many <= mostSearched) {
    const lengths = falling.flatMap(({ length, count }) => Array<number>(count).fill(length));
    const found = searchBars(lengths, capacity, bars, lowerBound, looks);
    if (found) patterns = together(found);
    bars = barsOf(patterns);
  }
  return { patterns, bars, lowerBound };
}

const barsOf = (patterns: readonly Pattern[]): number =>
  patterns.reduce((sum, { bars }) => sum + bars, 0);

/** One entry for each length, longest first. */
function merged(pieces: readonly Alike[]): Alike[] {
  const counts = new Map<number, number>();
  for (const { length, count } of pieces) counts.set(length, (counts.get(length) ?? 0) + count);
  return [...counts]
    .map(([length, count]) => ({ length, count }))
    .filter(({ count }) => count > 0)
    .sort((a, b) => b.length - a.length);
}

function together(bars: readonly number[][]): Pattern[] {
  const patterns = new Map<string, Pattern>();
  for (const bar of bars) {
    const pieces = merged(bar.map((length) => ({ length, count: 1 })));
    const key = pieces.map(({ length, count }) => `${count}x${length}`).join(' ');
    const same = patterns.get(key);
    if (same) same.bars += 1;
    else patterns.set(key, { bars: 1, pieces });
  }
  return [...patterns.values()];
}
