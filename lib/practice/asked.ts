/** What a reader is asked for, and in which unit or words it is answered. */
import type { Typed } from '../answer.ts';
import type { Calculation, Output } from '../calculation.ts';
import { convert, type System, type Unit, unitFor } from '../units.ts';

export interface Asked {
  calculation: Calculation;
  typed: Typed;
  results: Readonly<Record<string, unknown>>;
  want: string;
  system: System;
}

/** A ruler, a watch and rounding in between. */
export const tolerance = 0.02;
/** The same for the reader, above the problems. */
export const toleranceText =
  'An answer within 2 in a hundred, or rounded like the answers on this page, counts as right; counts and words must be exact. Fractions and units are welcome.';

/** The output that is asked for. */
export const outputOf = ({ calculation, want }: Asked): Output =>
  calculation.outputs[want] as Output;

/** The words to choose from, where the answer is none of a number. */
export function wordsOf(asked: Asked): readonly string[] | undefined {
  const output = outputOf(asked);
  if ('yes' in output) return ['yes', 'no'];
  return typeof asked.results[asked.want] === 'string' && 'words' in output
    ? output.words
    : undefined;
}

/** The unit in which a bare number is taken. */
export function unitAsked(asked: Asked): Unit {
  const output = outputOf(asked);
  if ('printed' in output) return output.printed[asked.system];
  return 'unit' in output ? unitFor(output.unit, asked.system) : '1';
}

/** A result of this output as a number in `unit`; undefined where it is none. */
export function numberOf(output: Output, result: unknown, unit: Unit): number | undefined {
  if ('printed' in output && typeof result === 'object' && result !== null) {
    const { us, metric } = result as Record<System, number>;
    return unit === output.printed.metric && unit !== output.printed.us ? metric : us;
  }
  return typeof result === 'number' && 'unit' in output
    ? convert(result, output.unit, unit)
    : undefined;
}
