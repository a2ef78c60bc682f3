import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import ventilationCheck from '../../../lib/calculations/ventilation-check.ts';

const room = fc.record({
  welders: fc.integer({ min: 1, max: 40 }).map(String),
  roomVolume: fc.integer({ min: 1000, max: 900_000 }).map((size) => `${size} ft3`),
  ceilingHeight: fc.integer({ min: 8, max: 40 }).map((height) => `${height} ft`),
  crossFlow: fc.constantFrom('free', 'obstructed'),
});

describe('ventilation-check', () => {
  it('asks for exhaust at the arc in every room, first, and never says that none is needed', () => {
    fc.assert(
      fc.property(room, (given) => {
        const answered = answer(ventilationCheck, given);
        if (!answered.ok) throw new Error(answered.problems[0]?.text);
        expect(answered.results.first).toBe('local exhaust at each booth');
        expect(answered.because[0]?.text).toContain('{100 ft/min|30 m/min}');
        const words = JSON.stringify([answered.results, answered.because]);
        expect(words).not.toMatch(/no (mechanical )?ventilation|not needed|none needed/i);
      }),
    );
  });

  it('reaches the room rule by any one of its three conditions', () => {
    fc.assert(
      fc.property(room, (given) => {
        const answered = answer(ventilationCheck, given);
        const reached =
          Number.parseInt(given.roomVolume, 10) < 10_000 * Number(given.welders) ||
          Number.parseInt(given.ceilingHeight, 10) < 16 ||
          given.crossFlow === 'obstructed';
        expect(answered.ok && answered.results.room === 'asks for mechanical ventilation too').toBe(
          reached,
        );
      }),
    );
  });
});

it('tells how strong the capture is, and how much room each welder has, in either system', () => {
  const ask = (typed: Typed) => {
    const found = answer(ventilationCheck, {
      welders: '2',
      roomVolume: '20000 ft3',
      ceilingHeight: '20 ft',
      crossFlow: 'free',
      ...typed,
    });
    if (!found.ok) throw new Error(found.problems[0]?.text);
    return found.results;
  };
  expect(ask({}).capture).toBe('not measured');
  expect(ask({ captureVelocity: '100 ft/min' }).capture).toBe('strong enough');
  expect(ask({ captureVelocity: '99 ft/min' }).capture).toBe('too weak');
  expect(ask({ captureVelocity: '30 m/min' }).capture).toBe('strong enough');
  expect(ask({ captureVelocity: '29 m/min' }).capture).toBe('too weak');
  expect(ask({}).spacePerWelder).toBe(10_000);
  // A cubic meter is 35.3147 ft³.
  expect(ask({ roomVolume: '600 m3' }).spacePerWelder).toBeCloseTo(300 * 35.3147, 0);
  expect(ask({}).generalFlow).toEqual({ us: 4000, metric: 114 });
});

it('holds a room in meters to the printed meters: 284 m³ for each welder, 5 m of height', () => {
  const room = (typed: Typed) => {
    const found = answer(ventilationCheck, {
      welders: '2',
      roomVolume: '568 m3',
      ceilingHeight: '5 m',
      crossFlow: 'free',
      ...typed,
    });
    return found.ok && found.results.room === 'asks for mechanical ventilation too';
  };
  expect(room({})).toBe(false);
  expect(room({ roomVolume: '567.9 m3' })).toBe(true);
  expect(room({ ceilingHeight: '4.99 m' })).toBe(true);
});
