/** The end of a trace against the whole of it. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { recentTrace } from '../../../lib/electrode-log/recent-trace.ts';
import type { LogEvent } from '../../../lib/exposure/exposure-log.ts';
import { type ExposureTrace, exposureTrace } from '../../../lib/exposure/exposure-trace.ts';

/** Between two corners the line is straight. */
function lineAt({ line }: ExposureTrace, time: number): number | undefined {
  const after = line.findIndex((corner) => corner.time > time);
  const [a, b] = [line[after - 1], line[after]];
  return a && b && a.hours + ((b.hours - a.hours) * (time - a.time)) / (b.time - a.time);
}

const hot = { temperature: { value: 250, system: 'us' } } as const;
const logs = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 20 });

it('begins where it is asked to, and tells the same from there on', () => {
  fc.assert(
    fc.property(logs, fc.double({ min: 0, max: 1, noNaN: true }), (waits, part) => {
      let at = 0;
      const events: LogEvent[] = waits.map((wait, place) => {
        at += wait;
        return place % 2 ? { event: 'in oven', at, ...hot } : { event: 'out', at };
      });
      const end = at + 3;
      const whole = exposureTrace(4, events, end);
      const start = events[0]?.at ?? 0;
      const from = start + part * (end - start) * 0.99;
      const recent = recentTrace(whole, from);
      expect(recent.line[0]?.time).toBeCloseTo(from, 9);
      expect(recent.stays[0]?.from).toBeCloseTo(from, 9);
      expect(recent.stays.at(-1)?.to).toBeCloseTo(end, 9);
      for (const share of [0.01, 0.3, 0.7, 0.99]) {
        const time = from + share * (end - from);
        expect(lineAt(recent, time)).toBeCloseTo(lineAt(whole, time) ?? Number.NaN, 6);
      }
    }),
  );
});

it('leaves a trace alone that begins later', () => {
  const whole = exposureTrace(4, [{ event: 'out', at: 2 }], 5);
  expect(recentTrace(whole, 1)).toBe(whole);
});
