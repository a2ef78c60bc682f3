/**
 * Junk and extremes at every calculation, through the same edge as the form: either an answer of
 * finite, physical numbers with a reason for each, or a sentence. Never an exception.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calculationIds } from '../../content/commands/calculation-ids.ts';
import { answer, type Typed } from '../../lib/answer.ts';
import type { Calculation, Input } from '../../lib/calculation.ts';
import { loadCalculation } from '../../lib/calculations.ts';

import { speak } from '../../lib/text/say.ts';
import { misfits } from './misfits.ts';

const calculations = await Promise.all(
  calculationIds().map(async (id) => ({ id, calculation: await loadCalculation(id) })),
);

const junk = fc.oneof(
  fc.string(),
  fc.double(),
  fc.constantFrom(
    '',
    '0',
    '-1',
    '1e999',
    'NaN',
    '1/0',
    '∞',
    '5 V',
    '3,500',
    '<script>',
    '9'.repeat(400),
    '2026-02-30',
  ),
);

function sensible(input: Input): fc.Arbitrary<unknown> {
  if ('list' in input) return fc.array(fc.record(mapped(input.list)), { maxLength: 6 });
  if ('choices' in input) return fc.constantFrom(...input.choices);
  if ('date' in input)
    return fc
      .date({ min: new Date('1990-01-01'), max: new Date('2060-12-31'), noInvalidDate: true })
      .map((at) => at.toISOString().slice(0, 10));
  const { min = -1e4, max = 1e4 } = input.limits;
  const inside = fc.double({ min, max: Math.min(max, 1e6), noNaN: true });
  return fc.oneof(
    fc.constantFrom(min, Math.min(max, 1e6)),
    ('whole' in input && input.whole ? inside.map(Math.round) : inside).map(String),
  );
}
const mapped = (inputs: Record<string, Input>) =>
  Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, sensible(input)]));

function holds(calculation: Calculation, typed: Typed): void {
  const answered = answer(calculation, typed);
  if (!answered.ok) {
    expect(answered.problems.length).toBeGreaterThan(0);
    for (const { text } of answered.problems) expect(speak(text, 'metric')).toMatch(/\S/);
    return;
  }
  expect(misfits(calculation.outputs, answered.results), JSON.stringify(typed)).toEqual([]);
  if (calculation.kind === 'procedure') expect(answered.because).not.toEqual([]);
  for (const { text } of answered.because) expect(speak(text, 'us')).toMatch(/\S/);
}

describe.each(calculations)('$id', ({ calculation }) => {
  it('meets junk with a sentence', () => {
    const anything = Object.fromEntries(
      Object.entries<Input>(calculation.inputs).map(([name, input]) => [
        name,
        fc.option(fc.oneof(junk, sensible(input), fc.array(fc.dictionary(fc.string(), junk))), {
          nil: undefined,
        }),
      ]),
    );
    fc.assert(
      fc.property(fc.record(anything), (typed) => holds(calculation, typed as Typed)),
      { numRuns: 60 },
    );
  });

  it('gives what its outputs describe, in finite, physical numbers, all over its limits', () => {
    fc.assert(
      fc.property(fc.record(mapped(calculation.inputs)), (typed) =>
        holds(calculation, typed as Typed),
      ),
      { numRuns: 120 },
    );
  });
});
