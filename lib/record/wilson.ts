/**
 * The range in which the true share may well lie when `passed` of `all` were seen: Wilson's score
 * interval at 95 %, without correction for continuity. Honest for small counts, and never outside 0 to 1.
 * Source: Newcombe 1998, Statistics in Medicine 17:857–872, method 3.
 * @throws RangeError unless 0 ≤ passed ≤ all and all ≥ 1
 */
export function wilson(passed: number, all: number): { low: number; high: number } {
  if (!(all >= 1 && passed >= 0 && passed <= all))
    throw new RangeError(`no share of ${passed} in ${all}`);
  const share = passed / all;
  const middle = share + z ** 2 / (2 * all);
  const half = z * Math.sqrt((share * (1 - share) + z ** 2 / (4 * all)) / all);
  const whole = 1 + z ** 2 / all;
  return {
    low: passed === 0 ? 0 : (middle - half) / whole,
    high: passed === all ? 1 : (middle + half) / whole,
  };
}

/** The point of the normal curve that leaves 2.5 % on each side. */
const z = 1.959963984540054;
