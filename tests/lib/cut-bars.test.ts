import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutBars } from '../../lib/cut-bars.ts';

/** The fewest bars by trying every way to share the pieces out. */
function fewest(lengths: readonly number[], capacity: number, left: number[] = []): number {
  const [length, ...rest] = lengths;
  if (length === undefined) return left.length;
  let least = fewest(rest, capacity, [...left, capacity - length]);
  left.forEach((room, bar) => {
    if (room >= length)
      least = Math.min(least, fewest(rest, capacity, left.with(bar, room - length)));
  });
  return least;
}

const pieces = (most: number) => fc.array(fc.integer({ min: 1, max: 20 }), { maxLength: most });

test('small cases take as few bars as trying everything', () => {
  fc.assert(
    fc.property(pieces(7), (lengths) => {
      const { bars, lowerBound } = cutBars(lengths, 20);
      expect(bars.length).toBe(fewest(lengths, 20));
      expect(lowerBound).toBeLessThanOrEqual(bars.length);
    }),
  );
});

test('every piece is cut once and no bar is overfull', () => {
  fc.assert(
    fc.property(pieces(200), (lengths) => {
      const { bars } = cutBars(lengths, 20);
      const order = (list: number[]) => [...list].sort((a, b) => a - b);
      expect(order(bars.flat())).toEqual(order(lengths));
      for (const bar of bars) expect(bar.reduce((a, b) => a + b, 0)).toBeLessThanOrEqual(20);
    }),
    { numRuns: 30 },
  );
});

test('two hundred pieces within 50 ms', () => {
  const lengths = Array.from({ length: 200 }, (_, at) => 700 + ((at * 7919) % 3100));
  cutBars(lengths, 9001);
  const start = performance.now();
  cutBars(lengths, 9001);
  expect(performance.now() - start).toBeLessThan(50);
});
