/** A cutting plan in inches: what a saw takes and a bent end costs, turned into whole numbers. */
import { cutBars } from './cut-bars.ts';
import type { Alike } from './least-bars.ts';

/** Bars as they are bought and cut; inches. */
export interface Stock {
  length: number;
  /** Width of the cut. The last piece of a full bar needs none. */
  kerf: number;
  /** Goes from each bar, its own cut included. */
  trim: number;
}

export interface BarPlan {
  /** Bars that are cut alike stand together; lengths in inches, longest first. */
  patterns: { bars: number; pieces: Alike[]; used: number }[];
  bars: number;
  lowerBound: number;
}

/** Parts of an inch in which both 1/64 in and a micrometer are whole, so that sums are exact. */
const parts = 25_400 * 64;
const whole = (inches: number): number => Math.round(inches * parts);

/** The first length of which not even one comes from a bar; undefined where all fit. */
export const tooLong = (lengths: readonly number[], { length, trim }: Stock): number | undefined =>
  lengths.find((it) => whole(it) > whole(length) - whole(trim));

/** Cuts `pieces`, none of them too long for `stock`. */
export function planBars(pieces: readonly Alike[], { length, kerf, trim }: Stock): BarPlan {
  // The last piece of a full bar needs no cut, so each bar is one kerf longer than it is.
  const cut = whole(kerf);
  const plan = cutBars(
    pieces.map((it) => ({ length: whole(it.length) + cut, count: it.count })),
    whole(length) - whole(trim) + cut,
  );
  const patterns = plan.patterns.map(({ bars, pieces: alike }) => {
    const net = alike.map((it) => ({ length: (it.length - cut) / parts, count: it.count }));
    return { bars, pieces: net, used: net.reduce((sum, it) => sum + it.length * it.count, 0) };
  });
  return { patterns, bars: plan.bars, lowerBound: plan.lowerBound };
}
