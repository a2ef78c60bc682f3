/** A problem with fresh numbers, made from a calculation's own description and answered by it. */
import { type Answer, answer, type Typed } from '../answer.ts';
import type { Calculation, Input, Output } from '../calculation.ts';
import type { System } from '../units.ts';
import { seeded } from './seeded.ts';
import { shopValue } from './shop-value.ts';

export interface Problem {
  /** The name of the output that is asked for. */
  want: string;
  output: Output;
  typed: Typed;
  found: Answer;
  /** The lead, the givens and the question, as sentences with `{quantities}`. */
  text: string;
}

const leads = [
  'At the booth you find this:',
  'The sheet on the curtain says:',
  'A partner reads out:',
  'Your notebook has:',
];

/** Can problems be made for it? Lists of rows are no work for the head. */
export const canBePractised = (calculation: Calculation): boolean =>
  Object.values<Input>(calculation.inputs).every((input) => input.optional || !('list' in input)) &&
  asked(calculation).length > 0;

/** Outputs that have one answer: a number or one of a few words. */
function asked({ outputs }: Calculation): [string, Output][] {
  return Object.entries<Output>(outputs).filter(
    ([, output]) =>
      ('unit' in output || 'printed' in output || 'words' in output) && !('optional' in output),
  );
}

/**
 * The problem with this number in this set, in whole values of the reader's system.
 * @throws RangeError when no fitting values turn up, which the tests rule out
 */
export function makeProblem(
  id: string,
  calculation: Calculation,
  set: number,
  place: number,
  system: System,
): Problem {
  const next = seeded(id, set, place);
  const outputs = asked(calculation);
  const [want, output] = outputs[Math.floor(next() * Math.min(2, outputs.length))] as [
    string,
    Output,
  ];
  const lead = leads[Math.floor(next() * leads.length)] as string;
  const inputs = Object.entries<Input>(calculation.inputs).filter(
    ([, input]) => !input.optional && !('default' in input && input.default !== undefined),
  );
  for (let attempt = 0; attempt < 240; attempt++) {
    const spread = 1 - Math.floor(attempt / 40) / 5;
    const typed = Object.fromEntries(
      inputs.map(([name, input]) => [name, shopValue(name, input, next(), system, spread)]),
    );
    const found = answer(calculation, typed);
    if (!found.ok || !isUsable(found.results[want])) continue;
    const givens = inputs.map(
      ([name, input]) => `${lower(input.label)} ${braced(typed[name] as string, input)}`,
    );
    const text = `${lead} ${givens.join('; ')}. What is this: ${lower(output.label)}?`;
    return { want, output, typed, found, text };
  }
  throw new RangeError(`no problem can be made for ${id}, set ${set}, number ${place}`);
}

const isUsable = (value: unknown): boolean =>
  (typeof value === 'number' && value >= 0) ||
  (typeof value === 'object' && value !== null) ||
  typeof value === 'string';

const lower = (label: string): string =>
  /^[A-Z][a-z]/.test(label) ? (label[0] as string).toLowerCase() + label.slice(1) : label;

const braced = (text: string, input: Input): string =>
  'choices' in input || 'date' in input ? text : `{${text}}`;
