/**
 * What a calculation may answer: a quantity, a figure as it is printed, a word, a sentence, yes or
 * no, rows, or outlines to draw.
 */
import type { Unit } from './units.ts';

/** What every output has. */
interface Told {
  label: string;
  symbol?: string;
}

/** A number in a declared unit; a reader sees it in his own. */
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

/** A number that a formula gives. */
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
/** One of a few words, such as `fits`. */
export interface WordOutput extends Told {
  words: readonly string[];
}
/** A text that may hold quantities in braces. */
export interface TextOutput extends Told {
  text: true;
}
/** Yes or no. */
export interface YesOutput extends Told {
  yes: true;
}
/** One column of a list: quantities or texts, which may be missing in a row. */
export type Column = { label: string } & (
  | { unit: Unit; digits?: number; fraction?: number }
  | { text: true }
);
/** Rows of the same columns. */
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
