/** A result that an answer may do without says so, or a form would print a gap. */
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import type { Calculation, Input, Output } from '../../../lib/calculation.ts';
import { loadCalculation } from '../../../lib/calculations.ts';

const words = (text = '') => text.split(' ').filter(Boolean);
const example = (calculation: Calculation): Typed =>
  Object.fromEntries(
    Object.entries<Input>(calculation.inputs).map(([name, { example: shown }]) => [
      name,
      typeof shown === 'object' && 'us' in shown ? shown.us : shown,
    ]),
  );

/** Each with what is typed so that it does. */
const withoutResult: [id: string, typed: Typed, missing: string][] = [
  ['groove-passes', { passArea: '0.03 in2' }, 'runOutEach'],
  ['padding-plan', { plateWidth: '3/8 in' }, 'pitch evenedOverlap valleyDepth'],
  ['passes-left', { depth: '1/16 in' }, 'evenThickness'],
  ['pipe-position', { pipeInclination: '0', clockAngle: '90' }, 'faceRotation'],
  ['procedure-check', { voltage: undefined }, 'arcEnergy'],
  ['rod-check', { arcTime: undefined }, 'travelSpeed meltRate'],
];

describe('a result that can be missing', () => {
  it.each(withoutResult)(
    '%s with %o gives no %s, and says that it may',
    async (id, change, missing) => {
      const { outputs, ...calculation } = await loadCalculation(id);
      const asked = (typed: Typed) => {
        const answered = answer({ outputs, ...calculation } as Calculation, typed, 'us');
        if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
        return Object.keys(outputs).filter((name) => answered.results[name] === undefined);
      };
      const typed = example({ outputs, ...calculation } as Calculation);
      expect(asked({ ...typed, ...change })).toEqual(words(missing));
      const may = Object.entries<Output>(outputs).filter(
        ([, output]) => 'optional' in output && output.optional,
      );
      expect(may.map(([name]) => name)).toEqual(words(missing));
    },
  );
});
