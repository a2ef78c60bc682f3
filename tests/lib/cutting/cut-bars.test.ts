import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planBars, tooLong } from '../../../lib/cutting/bar-plan.ts';
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
