/** Where a fact stands and how it is known: beside every limit, constant, row and rule. */
import type { SourceId } from './sources.ts';

/** How a fact is known. The page shows it beside the value. */
export type Known = 'read' | 'memory' | 'practice' | 'derived';

export interface Citation {
  source: SourceId;
  /** Clause, table or page, with the edition where editions differ. */
  at?: string;
  known: Known;
}

export interface Reason {
  text: string;
  /** `row`: a table's row that was used; `passed`: one that was not; `caution`: mind this. */
  kind?: 'rule' | 'row' | 'passed' | 'caution';
  cite?: Citation;
}
