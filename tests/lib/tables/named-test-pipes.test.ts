/**
 * The pipes that AWS D1.1 named for its tests up to the early 2000s: NPS 2 Sch 80 or NPS 3 Sch 40 for
 * 0.063 in to 0.674 in and 3/4 in to 4 in, NPS 6 Sch 120 or NPS 8 Sch 80 for 0.187 in and 4 in upward
 * (from memory); their sizes are those of ASME B36.10.
 */
import { describe, expect, it } from 'vitest';
import { sizesByNamedPipe } from '../../../lib/tables/named-test-pipes.ts';
import { pipeRows } from '../../../lib/tables/pipe-b36.10.ts';

const small = {
  thicknessFrom: { us: 0.063, metric: 1.6 },
  thicknessTo: { us: 0.674, metric: 17.1 },
  diameterFrom: { us: 0.75, metric: 19 },
  diameterTo: { us: 4, metric: 102 },
};
const large = {
  thicknessFrom: { us: 0.187, metric: 4.7 },
  thicknessTo: 'unlimited',
  diameterFrom: { us: 4, metric: 102 },
  diameterTo: 'unlimited',
};
const named = [
  ['2', '80', small],
  ['3', '40', small],
  ['6', '120', large],
  ['8', '80', large],
] as const;
const systems = ['us', 'metric'] as const;

describe('a named test pipe', () => {
  it.each(named)(
    'of NPS %s, schedule %s is known within a caliper’s error',
    (nps, schedule, sizes) => {
      const { outside, walls } = pipeRows[nps];
      for (const [index, system] of systems.entries()) {
        const sized = (wallTimes: number, outsideTimes: number) =>
          sizesByNamedPipe(
            { value: (walls[schedule]?.[index] ?? 0) * wallTimes, system },
            { value: (outside[index] ?? 0) * outsideTimes, system },
          );
        for (const times of [0.9855, 1, 1.0145]) {
          expect(sized(times, 1)).toMatchObject(sizes);
          expect(sized(1, times)).toMatchObject(sizes);
        }
        for (const times of [0.9845, 1.0155]) {
          expect(() => sized(times, 1)).toThrow(/none of the test pipes/);
          expect(() => sized(1, times)).toThrow(/none of the test pipes/);
        }
      }
    },
  );

  it('is one pipe: the wall of one with the diameter of another is none', () => {
    const us = (value: number) => ({ value, system: 'us' as const });
    expect(() => sizesByNamedPipe(us(0.218), us(3.5))).not.toThrow();
    expect(() => sizesByNamedPipe(us(0.562), us(8.625))).toThrow(
      expect.objectContaining({ field: 'outsideDiameter' }),
    );
  });
});
