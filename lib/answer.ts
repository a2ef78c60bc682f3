/**
 * The one edge between what people type and what is computed. Forms, lessons, the command line,
 * checks and tests all come through here: names, units and limits are looked at, values go to the
 * source's units, and the answer or the sentences that say why there is none come back.
 */
import type { Calculation, Reason } from './calculation.ts';
import { NoAnswer } from './no-answer.ts';
import { type AllGiven, type Bare, type Problem, readInputs, type Typed } from './read-inputs.ts';

export type { Bare, Given, Problem, Typed, TypedValue } from './read-inputs.ts';

/** Results stand in the declared units of the outputs; printed figures as `{ us, metric }`. */
export interface Answer {
  /** What `compute` received: numbers in the declared units. */
  values: Record<string, unknown>;
  given: AllGiven;
  results: Record<string, unknown>;
  because: Reason[];
}

export type Answered = ({ ok: true } & Answer) | { ok: false; problems: Problem[] };

/**
 * Never throws for what was typed, however odd: it comes back as a problem, a phrase that starts with
 * the field's name. A fault of ours does throw.
 */
export function answer(calculation: Calculation, typed: Typed, bare: Bare = 'declared'): Answered {
  const { values, given, problems, cautions } = readInputs(calculation.inputs, typed, bare);
  if (problems.length > 0) return { ok: false, problems };
  try {
    const { because = [], ...results } = calculation.compute(values as never) as Record<
      string,
      unknown
    > & { because?: Reason[] };
    const notes =
      calculation.kind === 'formula'
        ? (calculation.notes?.(values as never, results as never) ?? [])
        : [];
    if (notFinite(results)) throw new NoAnswer('These values lie too far out to compute with');
    return { ok: true, values, given, results, because: [...because, ...notes, ...cautions] };
  } catch (thrown) {
    if (!(thrown instanceof NoAnswer)) throw thrown;
    return { ok: false, problems: [{ field: thrown.field ?? '', text: thrown.message }] };
  }
}

/** A number that is none, anywhere in the results, lists and outlines included. */
function notFinite(value: unknown): boolean {
  if (typeof value === 'object' && value !== null) return Object.values(value).some(notFinite);
  return typeof value === 'number' && !Number.isFinite(value);
}
