import type { Typed } from '../../lib/answer.ts';
import type { Calculation } from '../../lib/calculation.ts';
import { readGiven } from '../../lib/text/given-line.ts';
import { givenOf } from '../Booth/read-example.ts';
import { linesOf } from './lines-of.ts';

/** What a worked example is given: rows from its own line, all else from what the page shows. */
export function exampleGiven(example: HTMLElement, calculation: Calculation): Typed {
  const rows = example.querySelector<HTMLElement>('[data-given]')?.dataset.given;
  return rows
    ? readGiven(calculation.inputs, rows)
    : (givenOf(calculation, linesOf(example, 'givens')) ?? {});
}
