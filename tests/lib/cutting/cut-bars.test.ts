import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planBars, tooLong } from '../../../lib/cutting/bar-plan.ts';
import { cutBars } from '../../../lib/cutting/cut-bars.ts';
import { fullestBars, longestFirst } from '../../../lib/cutting/cut-patterns.ts';
import { type Alike, leastBars } from '../../../lib/cutting/least-bars.ts';
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

test.each([
  [[48, 44, 44, 42, 39, 35, 33, 31, 24, 24, 20], 4],
  [[53, 50, 46, 40, 40, 36, 34, 34, 32, 31, 29, 26, 23, 18], 5],
  [[46, 45, 45, 42, 41, 40, 38, 38, 38, 35, 34, 32, 28, 28, 20], 6],
])('a search saves the bar that both quick plans waste on %j', (lengths, bars) => {
  // No plan needs fewer: the sum of the lengths fills all but one bar of 100 and a part of it.
  expect(lengths.reduce((a, b) => a + b, 0)).toBeGreaterThan(100 * (bars - 1));
  expect(cutBars(alike(lengths), 100, 0).bars).toBe(bars + 1);
  const plan = cut(lengths, 100);
  expect(plan).toMatchObject({ bars, lowerBound: bars });
  expect(
    all(plan)
      .flat()
      .sort((a, b) => b - a),
  ).toEqual(lengths);
  expect(all(plan)).toHaveLength(bars);
  for (const bar of all(plan)) expect(bar.reduce((a, b) => a + b, 0)).toBeLessThanOrEqual(100);
});

test('bars that a search cuts alike stand together', () => {
  const asked = [
    { length: 48, count: 3 },
    { length: 44, count: 2 },
    { length: 38, count: 4 },
    { length: 25, count: 1 },
    { length: 23, count: 3 },
  ];
  expect(cutBars(asked, 100, 0).bars).toBe(6);
  const plan = cutBars(asked, 100);
  expect(plan.bars).toBe(5);
  expect(plan.patterns.some(({ bars }) => bars > 1)).toBe(true);
  const keys = plan.patterns.map(({ pieces }) => JSON.stringify(pieces));
  expect(new Set(keys).size).toBe(keys.length);
  expect(all(plan)).toHaveLength(plan.bars);
  expect(all(plan).flat()).toHaveLength(13);
});

test('a list with nothing in it takes no bar, and entries of one length are one', () => {
  expect(cutBars([], 20)).toEqual({ patterns: [], bars: 0, lowerBound: 0 });
  expect(cutBars([{ length: 8, count: 0 }], 20).bars).toBe(0);
  const plan = cutBars(
    [
      { length: 5, count: 2 },
      { length: 10, count: 1 },
      { length: 5, count: 2 },
    ],
    20,
  );
  expect(plan.patterns).toEqual([
    {
      bars: 1,
      pieces: [
        { length: 10, count: 1 },
        { length: 5, count: 2 },
      ],
    },
    { bars: 1, pieces: [{ length: 5, count: 2 }] },
  ]);
});

test('a plan in inches fills a bar to the last sixty-fourth, and to the last micrometer', () => {
  const exactly = (unit: number, more: number) => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 64, max: 700 }), { minLength: 2, maxLength: 6 }),
        fc.nat(12),
        fc.nat(40),
        (sizes, kerf, trim) => {
          const lengths = sizes.map((size) => ({ length: size * unit, count: 1 }));
          const sum = sizes.reduce((a, b) => a + b, 0) + kerf * (sizes.length - 1) + trim;
          const stock = { kerf: kerf * unit, trim: trim * unit };
          const plan = planBars(lengths, { ...stock, length: sum * unit });
          expect(plan.bars).toBe(1);
          expect(plan.patterns[0]?.used).toBeCloseTo(sizes.reduce((a, b) => a + b, 0) * unit, 9);
          // The smallest step shorter, and the last piece has no room.
          expect(planBars(lengths, { ...stock, length: sum * unit - more }).bars).toBe(2);
        },
      ),
      { numRuns: 60 },
    );
  };
  exactly(1 / 64, 1 / 64);
  exactly(0.1 / 25.4, 0.001 / 25.4);
});

test('the first piece that no bar holds is named', () => {
  const stock = { length: 240, kerf: 1 / 16, trim: 1 / 2 };
  expect(tooLong([8, 239.5], stock)).toBeUndefined();
  expect(tooLong([8, 239.6, 300], stock)).toBe(239.6);
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

/** Every way to take pieces for one bar, the longest among them, in falling order of what is taken. */
function* waysToFill(left: readonly Alike[], room: number, at = 0): Generator<number[]> {
  const piece = left[at];
  if (!piece) {
    yield [];
    return;
  }
  const most = Math.min(piece.count, Math.floor(room / piece.length));
  for (let many = most; many >= (at === 0 ? 1 : 0); many--)
    for (const rest of waysToFill(left, room - many * piece.length, at + 1)) yield [many, ...rest];
}

/** Bar after bar, alike ones together as long as the pieces last; `choose` says how a bar is filled. */
function cutBy(falling: readonly Alike[], choose: (left: Alike[]) => number[]) {
  const left = falling.map((it) => ({ ...it }));
  const patterns: { bars: number; pieces: Alike[] }[] = [];
  while (left.some(({ count }) => count > 0)) {
    const there = left.filter(({ count }) => count > 0);
    const taken = choose(there);
    const pieces = there.flatMap(({ length }, i) =>
      taken[i] ? [{ length, count: taken[i] as number }] : [],
    );
    const bars = Math.floor(
      Math.min(...there.map(({ count }, i) => (taken[i] ? count / taken[i] : Infinity))),
    );
    for (const [i, piece] of there.entries()) piece.count -= bars * (taken[i] ?? 0);
    patterns.push({ bars, pieces });
  }
  return patterns;
}

const mixed = fc
  .uniqueArray(fc.integer({ min: 4, max: 40 }), { minLength: 1, maxLength: 7 })
  .chain((lengths) =>
    fc.tuple(
      fc.constant(lengths.sort((a, b) => b - a)),
      fc.array(fc.integer({ min: 1, max: 5 }), {
        minLength: lengths.length,
        maxLength: lengths.length,
      }),
    ),
  )
  .map(([lengths, counts]) =>
    lengths.map((length, i): Alike => ({ length, count: counts[i] as number })),
  );

test('longest first takes of each length, from the longest down, as many as still fit', () => {
  fc.assert(
    fc.property(mixed, (pieces) => {
      const first = (left: readonly Alike[]) => waysToFill(left, 40).next().value as number[];
      expect(longestFirst(pieces, 40)).toEqual(cutBy(pieces, first));
    }),
    { numRuns: 60 },
  );
});

test('the fullest bar round its longest piece is found, of equals the one with longer pieces', () => {
  const fullest = (left: readonly Alike[]) => {
    const filled = (way: readonly number[]) =>
      way.reduce((sum, many, i) => sum + many * (left[i] as Alike).length, 0);
    return [...waysToFill(left, 40)].reduce((best, way) =>
      filled(way) > filled(best) ? way : best,
    );
  };
  fc.assert(
    fc.property(mixed, (pieces) => {
      expect(fullestBars(pieces, 40)).toEqual(cutBy(pieces, fullest));
    }),
    { numRuns: 150 },
  );
});

test('without looks left the fullest bar is what longest first takes, and one look loses nothing', () => {
  fc.assert(
    fc.property(mixed, (pieces) => {
      expect(fullestBars(pieces, 40, 0)).toEqual(longestFirst(pieces, 40));
    }),
    { numRuns: 60 },
  );
  expect(fullestBars(alike([10, 5, 3, 2]), 20, 1)).toEqual(longestFirst(alike([10, 5, 3, 2]), 20));
  expect(fullestBars(alike([10, 5, 3]), 20, 1)).toEqual(longestFirst(alike([10, 5, 3]), 20));
});

test('each bar has its share of the looks: one that cannot be filled leaves some to the next', () => {
  // Beside 595 nothing that ends in 0 fills a bar of 1000; without it three or more do.
  const lengths = [595, 150, 140, 130, 120, 110, 90, 80, 70, 50, 40];
  const plan = fullestBars(
    lengths.map((length) => ({ length, count: 2 })),
    1000,
    800,
  );
  const filled = plan.flatMap(({ bars, pieces }) =>
    Array<number>(bars).fill(pieces.reduce((sum, it) => sum + it.length * it.count, 0)),
  );
  expect(filled.slice(0, 3)).toEqual([995, 995, 1000]);
});

test('of the two quick plans the one with fewer bars is kept, of equals longest first', () => {
  const counted = (list: string) =>
    list.split(' ').map((it): Alike => {
      const [count, length] = it.split('×').map(Number) as [number, number];
      return { length, count };
    });
  const bars = (plan: { bars: number }[]) => plan.reduce((sum, it) => sum + it.bars, 0);
  const worse = counted('1×31 3×29 2×27 2×25 2×20 1×17 1×9');
  expect([bars(longestFirst(worse, 60)), bars(fullestBars(worse, 60))]).toEqual([5, 6]);
  expect(cutBars(worse, 60, 0).bars).toBe(5);
  const equal = counted('2×11 1×7 1×5 2×3');
  expect(fullestBars(equal, 20)).not.toEqual(longestFirst(equal, 20));
  expect(cutBars(equal, 20, 0).patterns).toEqual(longestFirst(equal, 20));
});

test('a hopeless mix comes to an end: even pieces never fill an odd bar', () => {
  const even = Array.from({ length: 60 }, (_, i) => ({ length: 160 - 2 * i, count: 3 }));
  const bars = fullestBars(even, 2001, 500);
  const count = (list: readonly Alike[]) => list.reduce((sum, it) => sum + it.count, 0);
  expect(bars.reduce((sum, { bars: many, pieces }) => sum + many * count(pieces), 0)).toBe(180);
  for (const { pieces } of bars)
    expect(pieces.reduce((sum, { length, count: many }) => sum + length * many, 0)).toBeLessThan(
      2001,
    );
});

test('bars that were cut from whole ones are put together again by the search', () => {
  const random = seeded('whole bars');
  for (let list = 0; list < 60; list++) {
    const bars = 3 + Math.floor(random() * 3);
    const lengths: number[] = [];
    // Of so fine lengths hardly any other three fill a bar.
    for (let bar = 0; bar < bars; bar++) {
      const first = 2000 + Math.floor(random() * 3000);
      const second = 1500 + Math.floor(random() * (7500 - first));
      lengths.push(first, second, 10_000 - first - second);
    }
    const sorted = lengths.sort((a, b) => b - a);
    const found = searchBars(sorted, 10_000, bars + 1, bars, 3e6);
    expect(found?.map((bar) => bar.reduce((a, b) => a + b, 0))).toEqual(Array(bars).fill(10_000));
    expect(found?.flat().sort((a, b) => b - a)).toEqual(sorted);
  }
});

test('a list is searched on up to a thousand pieces, and left as it is beyond', () => {
  const awkward = [
    { length: 48, count: 3 },
    { length: 44, count: 2 },
    { length: 38, count: 4 },
    { length: 25, count: 1 },
    { length: 23, count: 3 },
  ];
  const withWhole = (count: number) => cutBars([{ length: 100, count }, ...awkward], 100, 1e7).bars;
  expect(withWhole(987)).toBe(987 + 5);
  expect(withWhole(988)).toBe(988 + 6);
});
