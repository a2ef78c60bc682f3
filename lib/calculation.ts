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
import type { SourceId } from './sources.ts';
import type { System, Unit } from './units.ts';

/** How a fact is known. The page shows it beside the value. */
export type Known = 'read' | 'memory' | 'practice' | 'derived';

export interface Citation {
  source: SourceId;
  /** Clause, table or page, with the edition where editions differ. */
  at?: string;
  known: Known;
}

/** Bounds in the declared unit, with the reason that a reader is told. */
export interface Bounds {
  min?: number;
  max?: number;
  why: string;
  cite?: Citation;
}

export type PerSystem = string | { us: string; metric: string };

interface Asked {
  label: string;
  /** How a reader gets this value at the booth: measured how, read where, decided by whom. */
  obtain: string;
  /** The id of a calculation that estimates it. */
  estimateBy?: string;
  /** May be left out; `compute` then receives undefined. */
  optional?: true;
}

export interface QuantityInput extends Asked {
  symbol: string;
  /** The unit of the source, in which `compute` receives the number. */
  unit: Unit;
  /** Outside these there is no answer, and the reader is told why. */
  limits: Bounds;
  /** Outside these there is an answer and a caution. */
  usual?: Bounds;
  /** What the form opens with: text in the unit that each system shows. */
  example: PerSystem;
  /** Taken when nothing is given. Only for values that a source fixes; the page shows them. */
  default?: string;
  whole?: true;
}

/** A size that is looked up in printed rows, in the system of the unit that was typed. */
export interface PrintedInput extends Asked {
  symbol: string;
  printed: { us: Unit; metric: Unit };
  /** In the US unit. */
  limits: Bounds;
  example: PerSystem;
}

export interface ChoiceInput extends Asked {
  choices: readonly string[];
  example: string;
  default?: string;
}

/** A calendar day; `compute` receives it as `2026-03-02`. */
export interface DateInput extends Asked {
  date: true;
  example: string;
}

/** Rows of the same shape: deposits, pieces, events of a log. */
export interface ListInput extends Asked {
  list: Record<string, QuantityInput | PrintedInput | ChoiceInput | DateInput>;
  example: readonly Record<string, string>[];
}

export type Input = QuantityInput | PrintedInput | ChoiceInput | DateInput | ListInput;
export type Inputs = Record<string, Input>;

interface Told {
  label: string;
  symbol?: string;
}

export interface QuantityOutput extends Told {
  unit: Unit;
  /** Significant digits that the reader is shown: as many as the inputs deserve. */
  digits?: number;
  /** The rule on which inches are printed, such as 32. */
  fraction?: number;
  /** A practical size beside the exact one, and which way it was rounded. */
  round?: { to: string; way: 'up' | 'down' | 'nearest' };
  /** Words that may stand instead of a number, such as `unlimited`. */
  words?: readonly string[];
  /** May be negative. Without this, a negative result is a mistake of ours. */
  signed?: true;
  /** May be missing, where the rest of the answer stands without it. */
  optional?: true;
}

export interface FormulaOutput extends Told {
  unit: Unit;
  digits?: number;
  fraction?: number;
  round?: { to: string; way: 'up' | 'down' | 'nearest' };
  signed?: true;
  /** The formula as readers see it, in the declared units; may use outputs named before it. */
  formula: string;
}

/** A figure that the source prints in both systems; neither is converted from the other. */
export interface PrintedOutput extends Told {
  printed: { us: Unit; metric: Unit };
  /** Inches that lie on this rule are shown as a fraction. */
  fraction?: number;
  words?: readonly string[];
}
export interface WordOutput extends Told {
  words: readonly string[];
}
export interface TextOutput extends Told {
  text: true;
}
export interface YesOutput extends Told {
  yes: true;
}
export type Column = { label: string } & (
  | { unit: Unit; digits?: number; fraction?: number }
  | { text: true }
);
export interface ListOutput extends Told {
  list: Record<string, Column>;
}
/** Outlines in millimeters for a drawing; nothing to read aloud. */
export interface ShapeOutput extends Told {
  shape: true;
}

export type Output =
  | QuantityOutput
  | PrintedOutput
  | WordOutput
  | TextOutput
  | YesOutput
  | ListOutput
  | ShapeOutput;

/** A size in the system it was typed in, to be looked up in that system's printed rows. */
export interface Printed {
  value: number;
  system: System;
}

export interface Reason {
  text: string;
  /** `row`: a table's row that was used; `passed`: one that was not; `caution`: mind this. */
  kind?: 'rule' | 'row' | 'passed' | 'caution';
  cite?: Citation;
}

type ValueOf<F> = F extends { choices: readonly (infer C)[] }
  ? C
  : F extends { list: infer L }
    ? ValuesOf<L>[]
    : F extends { printed: unknown }
      ? Printed
      : F extends { date: true }
        ? string
        : number;
export type ValuesOf<I> = {
  [K in keyof I]: ValueOf<I[K]> | (I[K] extends { optional: true } ? undefined : never);
};

type CellOf<C> = C extends { unit: unknown } ? number | undefined : string | undefined;
type ResultOf<O> = O extends { list: infer L }
  ? { [K in keyof L]: CellOf<L[K]> }[]
  : O extends { yes: true }
    ? boolean
    : O extends { text: true }
      ? string
      : O extends { shape: true }
        ? object
        : O extends { printed: unknown; words: readonly (infer W)[] }
          ? { us: number; metric: number } | W
          : O extends { printed: unknown }
            ? { us: number; metric: number }
            : O extends { unit: unknown; words: readonly (infer W)[] }
              ? number | W
              : O extends { words: readonly (infer W)[] }
                ? W
                : number;
export type ResultsOf<O> = {
  [K in keyof O]: ResultOf<O[K]> | (O[K] extends { optional: true } ? undefined : never);
};

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

export function defineFormula<
  const I extends Inputs,
  const O extends Record<string, FormulaOutput>,
>(it: Omit<Formula<I, O>, 'kind'>): Formula<I, O> {
  return { kind: 'formula', ...it };
}

export function defineProcedure<const I extends Inputs, const O extends Record<string, Output>>(
  it: Omit<Procedure<I, O>, 'kind'>,
): Procedure<I, O> {
  return { kind: 'procedure', ...it };
}
