/** What a generated problem tells and asks, in words of its own for each calculation. */
import type { TypedValue } from '../answer.ts';

/** As typed, with its unit; `said` where the sentence has other words for it. */
export type Value = string | { typed: TypedValue; said: string };
/** What an input may be: the same for both readers, or in whole sizes of each system. */
export type Values = readonly Value[] | { us: readonly Value[]; metric: readonly Value[] };

export interface Scene {
  /**
   * What is known, in two forms or more that name the same inputs: `{width}` stands for the value of
   * that input. An input that is not named keeps its standard value and makes no difference.
   */
  told: readonly string[];
  /** A question or several for each output; it may name inputs that only this answer needs. */
  asked: Readonly<Record<string, string | readonly string[]>>;
  /**
   * Where the shop's own lists, or all words of a choice, do not do. A single value may stand in
   * words, without its name.
   */
  values?: Readonly<Record<string, Values>>;
}

/** The names of inputs in a text. Quantities in braces begin with a figure. */
export const namedIn = (text: string): string[] =>
  [...text.matchAll(/\{([a-z]\w*)\}/gi)].map(([, name]) => name as string);
