/**
 * What every calculation promises, whichever it is: the formula shown is the formula that runs,
 * its units balance, its example can be computed, and its texts can be read.
 */
import { describe, expect, it } from 'vitest';
import { typeset } from '../components/Formula/typeset.ts';
import { calculationIds as listIds } from '../content/commands/calculation-ids.ts';
import { answer, type Typed } from '../lib/answer.ts';
import type { Calculation, Formula, Inputs } from '../lib/calculation.ts';
import { loadCalculation } from '../lib/calculations.ts';
import { speak } from '../lib/text/say.ts';
import { disagreements, unbalanced, undeclared } from './formula-proof.ts';

const calculationIds = listIds();
const calculations = await Promise.all(
  calculationIds.map(async (id) => ({
    id,
    calculation: await loadCalculation(id),
  })),
);

const example = (inputs: Inputs, system: 'us' | 'metric'): Typed =>
  Object.fromEntries(
    Object.entries(inputs).map(([name, { example: shown }]) => [
      name,
      typeof shown === 'object' && 'us' in shown ? shown[system] : shown,
    ]),
  );

const required = (inputs: Inputs): Inputs =>
  Object.fromEntries(Object.entries(inputs).filter(([, input]) => !input.optional));

describe.each(calculations)('$id', ({ id, calculation }) => {
  it.each(['us', 'metric'] as const)(
    'answers its %s example, with and without what is optional',
    (system) => {
      for (const inputs of [calculation.inputs, required(calculation.inputs)]) {
        const answered = answer(calculation, example(inputs, system), system);
        expect(answered, JSON.stringify(answered)).toMatchObject({ ok: true });
        if (answered.ok)
          expect(Object.keys(calculation.outputs)).toEqual(
            expect.arrayContaining(Object.keys(answered.results)),
          );
      }
    },
  );

  it('has an id in plain kebab case and names in camel case', () => {
    expect(id).toMatch(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/);
    for (const name of [...Object.keys(calculation.inputs), ...Object.keys(calculation.outputs)])
      expect(name).toMatch(/^[a-z][A-Za-z0-9]*$/);
  });

  it('has texts whose quantities can be read', () => {
    for (const text of textsOf(calculation)) {
      expect(text.trim()).not.toBe('');
      for (const system of ['us', 'metric'] as const)
        expect(() => speak(text, system)).not.toThrow();
    }
  });

  it('points only to calculations that exist', () => {
    const named = [
      ...(calculation.related ?? []),
      ...Object.values(calculation.inputs).flatMap((input) => input.estimateBy ?? []),
    ];
    for (const other of named) expect(calculationIds).toContain(other);
  });

  if (calculation.kind === 'formula') {
    const formula: Formula = calculation;
    it('can be typeset, with a slot for every value', () => {
      for (const { output, symbols, numbers } of typeset(formula)) {
        expect(symbols).toContain('<math');
        expect(numbers, 'a slot left as text').not.toContain('@');
        const text = formula.outputs[output]?.formula ?? '';
        for (const name of Object.keys(formula.inputs))
          if (new RegExp(`\\b${name}\\b`).test(text))
            expect(numbers).toContain(`data-in="${name}"`);
      }
    });
    it('uses only declared names', () => {
      expect(undeclared(formula)).toEqual([]);
    });
    it('computes what its formula says, on a thousand points and at both sides of each threshold', () => {
      expect(disagreements(formula)).toEqual([]);
    });
    it.skipIf(formula.empirical)('balances its dimensions', () => {
      expect(unbalanced(formula)).toEqual([]);
    });
  }
});

function textsOf(calculation: Calculation): string[] {
  const inputs = Object.values(calculation.inputs).flatMap((input) => [
    input.label,
    input.obtain,
    ...('limits' in input ? [input.limits.why] : []),
    ...('usual' in input && input.usual ? [input.usual.why] : []),
  ]);
  return [
    calculation.title,
    calculation.summary,
    ...(calculation.beware ?? []),
    ...inputs,
    ...Object.values(calculation.outputs).map((output) => output.label),
  ];
}
