import type { Known as HowKnown } from '../../lib/calculation.ts';

const marks = { practice: 'common practice', memory: 'from memory' } as const;

/** `Known.astro` for live components: the same short marks, without the link. */
export default function Known({ known }: { known: HowKnown }) {
  return <small class="known">{(marks as Record<string, string>)[known] ?? known}</small>;
}
