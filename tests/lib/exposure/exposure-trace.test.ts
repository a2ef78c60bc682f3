/** The drawn clock against the answer to the same log, asked at any moment on the way. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import electrodeExposure from '../../../lib/calculations/electrode-exposure.ts';
import type { ExposureTrace } from '../../../lib/exposure/exposure-trace.ts';

type Row = Record<string, string>;

function ask(events: Row[], now: number) {
  const answered = answer(electrodeExposure, { classification: 'E7018', events, now });
  if (!answered.ok) throw new Error(answered.problems.map(({ text }) => text).join());
  return answered.results as unknown as { hoursOut: number; trace: ExposureTrace };
}

/** What the line says at a time between two corners. */
function lineAt({ line }: ExposureTrace, time: number): number {
  const after = line.findIndex((corner) => corner.time > time);
  const [a, b] = [line[after - 1], line[after]];
  if (!a || !b) throw new Error(`no line at ${time}`);
  return a.hours + ((b.hours - a.hours) * (time - a.time)) / (b.time - a.time);
}

/** Rows half an hour to six hours apart, opened first. */
const logs = fc
  .array(
    fc.record({
      wait: fc.integer({ min: 1, max: 12 }),
      event: fc.constantFrom('out', 'in oven', 'cool oven', 'in oven for a while'),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((steps) => {
    let at = 6;
    const rows: Row[] = [{ event: 'opened', at: '6' }];
    for (const { wait, event } of steps) {
      at += wait / 2;
      const oven = { event: 'in oven', at: String(at) };
      if (event === 'out') rows.push({ event, at: String(at) });
      else if (event === 'in oven') rows.push({ ...oven, temperature: '250 degF' });
      else if (event === 'cool oven') rows.push({ ...oven, temperature: '200 degF' });
      else {
        rows.push({ ...oven, temperature: '275 degF', hours: '1.75' });
        at += 1.75;
      }
    }
    return { rows, end: at + 3 };
  });

describe('the line of the clock', () => {
  it('says at every moment what the log up to then answers', () => {
    fc.assert(
      fc.property(logs, fc.nat(9999), ({ rows, end }, part) => {
        const whole = ask(rows, end);
        // Off the minute, where no row and no hold falls.
        const time = Math.round((6 + ((end - 6) * part) / 9999) * 60) / 60 + 0.005;
        fc.pre(time < end);
        const then = ask(
          rows.filter(({ at }) => Number(at) <= time),
          time,
        );
        expect(lineAt(whole.trace, time)).toBeCloseTo(then.hoursOut, 2);
      }),
      { numRuns: 500 },
    );
  });

  it('has the electrodes in one place after another, without a gap', () => {
    fc.assert(
      fc.property(logs, ({ rows, end }) => {
        const { stays } = ask(rows, end).trace;
        expect(stays[0]?.from).toBe(6);
        expect(stays.at(-1)?.to).toBeCloseTo(end, 9);
        for (const [index, { from }] of stays.entries())
          if (index > 0) expect(from).toBe(stays[index - 1]?.to);
      }),
    );
  });

  it('stands still in a bake and begins afresh after it', () => {
    const bake = { event: 'rebaked', at: '12', temperature: '700 degF', hours: '2' };
    const { trace } = ask([{ event: 'opened', at: '6' }, bake], 15);
    expect(lineAt(trace, 13)).toBeCloseTo(6, 2);
    expect(lineAt(trace, 14.5)).toBeCloseTo(0.5, 2);
    expect(trace.stays.map(({ place }) => place)).toEqual(['air', 'bake', 'air']);
  });
});
