/**
 * The types of what `compute` takes and gives, worked out from the descriptor's inputs and outputs:
 * a quantity is a number in its declared unit, a choice one of its words, an optional one may be
 * undefined.
 */

import type { PrintedFigure } from './printed-figure.ts';
import type { System } from './units.ts';

/** A size in the system it was typed in, to be looked up in that system's printed rows. */
export interface Printed {
  value: number;
  system: System;
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
/** What `compute` receives. */
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
          ? PrintedFigure | W
          : O extends { printed: unknown }
            ? PrintedFigure
            : O extends { unit: unknown; words: readonly (infer W)[] }
              ? number | W
              : O extends { words: readonly (infer W)[] }
                ? W
                : number;
/** What `compute` returns. */
export type ResultsOf<O> = {
  [K in keyof O]: ResultOf<O[K]> | (O[K] extends { optional: true } ? undefined : never);
};
