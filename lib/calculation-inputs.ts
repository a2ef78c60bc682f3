/**
 * What a calculation may ask for: a quantity, a size that is looked up in printed rows, a word, a
 * day, or rows of these.
 */
import type { Citation } from './citation.ts';
import type { Unit } from './units.ts';

/** Bounds in the declared unit, with the reason that a reader is told. */
export interface Bounds {
  min?: number;
  max?: number;
  why: string;
  cite?: Citation;
}

/** The same for everybody, or one for each system. */
export type PerSystem = string | { us: string; metric: string };

/** What every input has. */
interface Asked {
  label: string;
  /** How a reader gets this value at the booth: measured how, read where, decided by whom. */
  obtain: string;
  /** The id of a calculation that estimates it. */
  estimateBy?: string;
  /** May be left out; `compute` then receives undefined. */
  optional?: true;
}

/** A number with a unit, of any kind that converts into the declared one. */
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
  /** Counts only: 2.5 is refused. */
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

/** One of a few words; capitals make no difference. */
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
