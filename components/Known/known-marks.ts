import type { Known } from '../../lib/calculation.ts';

/** How a stated value is known: the mark beside it, and what the mark means. */
export const knownMarks = {
  read: { short: 'read', long: 'Seen in the named source, or in a quotation of it.' },
  memory: { short: 'from memory', long: 'Stated from memory: look it up in your own copy.' },
  practice: { short: 'common practice', long: 'What shops usually do; no publication says it.' },
  derived: { short: 'derived', long: 'Follows by arithmetic from what stands beside it.' },
} as const satisfies Record<Known, { short: string; long: string }>;
