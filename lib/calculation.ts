/**
 * What a calculation is. One file in `lib/calculations/` describes one: what it asks for, what it
 * answers, how the answer is computed, from which source, and where it stops being true.
 *
 * A **formula** carries text that readers see and that a test evaluates beside `compute`; the two
 * must agree. A **procedure** (a table look-up, a plan, a log, a classification) has no formula;
 * it returns the rules or rows it used as `because`.
 *
 * Texts may hold quantities in braces, such as `{3/8 in}` or `{3/4 in|20 mm}`: see `say.ts`.
 */
import type { Inputs } from './calculation-inputs.ts';
import type { FormulaOutput, Output } from './calculation-outputs.ts';
import type { Citation, Reason } from './citation.ts';
import type { ResultsOf, ValuesOf } from './computed-values.ts';
import type { Unit } from './units.ts';

// A file that describes a calculation speaks of all of these; it finds them in one place.
export type * from './calculation-inputs.ts';
export type * from './calculation-outputs.ts';
export type * from './citation.ts';
export type * from './computed-values.ts';

/** What every calculation says of itself. */
interface Described {
  title: string;
  /** One sentence: what it answers. */
  summary: string;
  /** Where it stops being true, or what it must not be used for. */
  beware?: readonly string[];
  cite: readonly Citation[];
  /** Ids of calculations that a reader will want next. */
  related?: readonly string[];
  /** Kept for engineers: shown apart and left out of the lessons' flow. */
  forEngineers?: true;
}

/** A named number from a source that a formula uses. */
export interface Constant {
  value: number;
  symbol: string;
  unit: Unit;
  name: string;
  cite: Citation;
}

/** Outputs that follow from inputs by formulas in the source's units. */
export interface Formula<
  I extends Inputs = Inputs,
  O extends Record<string, FormulaOutput> = Record<string, FormulaOutput>,
> extends Described {
  kind: 'formula';
  inputs: I;
  constants?: Record<string, Constant>;
  /** The dimensions do not balance: a fit to measurements, with units inside its coefficients. */
  empirical?: true;
  outputs: O;
  /** More reasons or cautions than the limits give, such as a note on the result. */
  notes?(given: ValuesOf<I>, results: { [K in keyof O]: number }): Reason[];
  compute(given: ValuesOf<I>): { [K in keyof O]: number };
}

/** Outputs that are looked up, planned or judged; `because` says by which rows and rules. */
export interface Procedure<
  I extends Inputs = Inputs,
  O extends Record<string, Output> = Record<string, Output>,
> extends Described {
  kind: 'procedure';
  inputs: I;
  outputs: O;
  compute(given: ValuesOf<I>): ResultsOf<O> & { because: Reason[] };
}

export type Calculation = Formula | Procedure;

/** Describes a formula; one file in `lib/calculations/` exports it as its default. Throw `NoAnswer` from `compute` where the values have no answer. */
export function defineFormula<
  const I extends Inputs,
  const O extends Record<string, FormulaOutput>,
>(it: Omit<Formula<I, O>, 'kind'>): Formula<I, O> {
  return { kind: 'formula', ...it };
}

/** Describes a procedure; as `defineFormula`, with the rows and rules used as `because`. */
export function defineProcedure<const I extends Inputs, const O extends Record<string, Output>>(
  it: Omit<Procedure<I, O>, 'kind'>,
): Procedure<I, O> {
  return { kind: 'procedure', ...it };
}
