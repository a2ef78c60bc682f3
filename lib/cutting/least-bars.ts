/** Pieces of one length. Lengths are whole numbers of any one unit, so that sums are exact. */
export interface Alike {
  length: number;
  count: number;
}

/**
 * The least bars that any cutting plan needs: bound L2 of Martello and Toth (1990), from pieces with
 * their lengths falling. Never below the sum bound. Exact sums; time grows with the different lengths.
 */
export function leastBars(falling: readonly Alike[], capacity: number): number {
  const count = runningSums(falling.map((it) => it.count));
  const length = runningSums(falling.map((it) => it.count * it.length));
  /** How many different lengths are over `limit`. */
  const over = (limit: number): number => {
    let from = 0;
    let to = falling.length;
    while (from < to) {
      const middle = (from + to) >> 1;
      if ((falling[middle] as Alike).length > limit) from = middle + 1;
      else to = middle;
    }
    return from;
  };
  const at = (sums: readonly number[], place: number) => sums[place] as number;
  const halves = over(capacity / 2);
  let least = Math.ceil(at(length, falling.length) / capacity);
  for (let place = halves; place < falling.length; place++) {
    const small = (falling[place] as Alike).length;
    // Those that no piece of this length fits beside, those over half a bar, and the rest down to it.
    const alone = over(capacity - small);
    const spare = (at(count, halves) - at(count, alone)) * capacity;
    const inHalves = at(length, halves) - at(length, alone);
    const rest = at(length, place + 1) - at(length, halves);
    const more = Math.max(0, Math.ceil((rest - (spare - inHalves)) / capacity));
    least = Math.max(least, at(count, halves) + more);
  }
  return Math.max(least, at(count, halves));
}

function runningSums(values: readonly number[]): number[] {
  const sums = [0];
  for (const value of values) sums.push((sums.at(-1) as number) + value);
  return sums;
}
