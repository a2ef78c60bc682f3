import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutBars } from '../../../lib/cutting/cut-bars.ts';
import { leastBars } from '../../../lib/cutting/least-bars.ts';
import { searchBars } from '../../../lib/cutting/search-bars.ts';
import { seeded } from '../../../lib/practice/seeded.ts';

const alike = (lengths: readonly number[]) => lengths.map((length) => ({ length, count: 1 }));
const cut = (lengths: readonly number[], capacity: number) => cutBars(alike(lengths), capacity);
const all = ({ patterns }: ReturnType<typeof cut>): number[][] =>
  patterns.flatMap(({ bars, pieces }) =>
    Array.from({ length: bars }, () =>
      pieces.flatMap(({ length, count }) => Array<number>(count).fill(length)),
    ),
  );

/** The fewest bars by trying every way to share the pieces out. */
function fewest(lengths: readonly number[], capacity: number, most = lengths.length): number {
  const left: number[] = [];
  let best = most;
  const place = (at: number): void => {
    if (left.length >= best) return;
    const length = lengths[at];
    if (length === undefined) {
      best = left.length;
      return;
    }
    for (let bar = 0; bar < left.length; bar++) {
      const room = left[bar] as number;
      if (room < length) continue;
      left[bar] = room - length;
      place(at + 1);
      left[bar] = room;
    }
    left.push(capacity - length);
    place(at + 1);
    left.pop();
  };
  place(0);
  return best;
}

/** Bound L2 word for word, over every cut-off. */
function restated(lengths: readonly number[], capacity: number): number {
  const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);
  let least = 0;
  for (let small = 0; small <= capacity / 2; small++) {
    const j1 = lengths.filter((it) => it > capacity - small);
    const j2 = lengths.filter((it) => it <= capacity - small && it > capacity / 2);
    const j3 = lengths.filter((it) => it <= capacity / 2 && it >= small);
    const more = Math.ceil((sum(j3) - (j2.length * capacity - sum(j2))) / capacity);
    least = Math.max(least, j1.length + j2.length + Math.max(0, more));
  }
  return least;
}

const falling = (lengths: readonly number[]) => alike([...lengths].sort((a, b) => b - a));
const pieces = (most: number) => fc.array(fc.integer({ min: 1, max: 20 }), { maxLength: most });
const longer = fc.array(fc.integer({ min: 6, max: 50 }), { maxLength: 9 });

test('small cases take as few bars as trying everything', () => {
  fc.assert(
    fc.property(pieces(8), (lengths) => {
      const { bars, lowerBound } = cut(lengths, 20);
      expect(bars).toBe(fewest(lengths, 20));
      expect(lowerBound).toBeLessThanOrEqual(bars);
    }),
    { numRuns: 400, interruptAfterTimeLimit: 20_000 },
  );
});

test('awkward lengths take as few bars as trying everything', () => {
  fc.assert(
    fc.property(longer, (lengths) => {
      expect(cut(lengths, 50).bars).toBe(fewest(lengths, 50));
    }),
    { numRuns: 300, interruptAfterTimeLimit: 20_000 },
  );
});

test('the lower bound is L2 as published, and never above the fewest', () => {
  fc.assert(
    fc.property(longer, (lengths) => {
      const least = leastBars(falling(lengths), 50);
      expect(least).toBe(restated(lengths, 50));
      expect(least).toBeLessThanOrEqual(fewest(lengths, 50));
    }),
    { numRuns: 300, interruptAfterTimeLimit: 20_000 },
  );
});

test('a search that knows only the worst plan ends at the best, and never goes back to a worse', () => {
  fc.assert(
    fc.property(longer, (lengths) => {
      const sorted = [...lengths].sort((a, b) => b - a);
      const found = searchBars(sorted, 50, lengths.length + 1, 0, 1e6);
      expect(found?.length).toBe(fewest(lengths, 50));
    }),
    { numRuns: 100, interruptAfterTimeLimit: 20_000 },
  );
});

test('every piece is cut once and no bar is overfull', () => {
  fc.assert(
    fc.property(pieces(200), (lengths) => {
      const plan = cut(lengths, 20);
      const bars = all(plan);
      const order = (list: number[]) => [...list].sort((a, b) => a - b);
      expect(order(bars.flat())).toEqual(order(lengths));
      expect(bars.length).toBe(plan.bars);
      for (const bar of bars) expect(bar.reduce((a, b) => a + b, 0)).toBeLessThanOrEqual(20);
    }),
    { numRuns: 100, interruptAfterTimeLimit: 20_000 },
  );
});

test('a mix of lengths fills a bar that the longest alone would leave short', () => {
  // 20 = 8 + 6 + 6; longest first cuts 8 + 8 and wastes 4 a bar.
  const plan = cutBars(
    [
      { length: 8, count: 100 },
      { length: 6, count: 200 },
    ],
    20,
  );
  expect(plan.bars).toBe(100);
});

test.skipIf(process.env.STRYKER_MUTATOR_WORKER)(
  'two hundred random pieces take under 50 ms in the worst of forty lists',
  () => {
    const random = seeded('two hundred pieces');
    let worst = 0;
    for (let list = 0; list < 40; list++) {
      const shortest = list % 2 === 0 ? 700 : 2000;
      const lengths = Array.from({ length: 200 }, () => shortest + Math.floor(random() * 3100));
      const start = performance.now();
      cut(lengths, 9001);
      // The first lists pay for the compiler.
      if (list >= 4) worst = Math.max(worst, performance.now() - start);
    }
    expect(worst).toBeLessThan(50);
  },
);

test.skipIf(process.env.STRYKER_MUTATOR_WORKER)(
  'a hopeless search stops: a thousand different lengths, once or tenfold, within a second',
  () => {
    const random = seeded('hopeless');
    for (const count of [1, 10]) {
      const hopeless = Array.from({ length: 1000 }, () => ({
        length: 3_000_001 + Math.floor(random() * 1e6),
        count,
      }));
      const start = performance.now();
      cutBars(hopeless, 10_000_000);
      expect(performance.now() - start).toBeLessThan(1000);
    }
  },
);
