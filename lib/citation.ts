/** Where a fact stands and how it is known: beside every limit, constant, row and rule. */
import type { SourceId } from './sources.ts';

/**
 * How a fact is known; the page shows it beside the value. `read`: seen in the source or in a copy
 * of its text. `memory`: recalled, and to be checked. `practice`: custom of the trade, no source.
 * `derived`: follows from definitions, by geometry or arithmetic.
 */
export type Known = 'read' | 'memory' | 'practice' | 'derived';

/** A place in a publication. */
export interface Citation {
  source: SourceId;
  /** Clause, table or page, with the edition where editions differ. */
  at?: string;
  known: Known;
}

/** A sentence under an answer: a rule or a row that led to it, or one that did not, and why. */
export interface Reason {
  text: string;
  /** `row`: a table's row that was used; `passed`: one that was not; `caution`: mind this. */
  kind?: 'rule' | 'row' | 'passed' | 'caution';
  cite?: Citation;
}
