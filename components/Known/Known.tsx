import type { Known as HowKnown } from '../../lib/calculation.ts';
import { knownMarks } from './known-marks.ts';

/** `Known.astro` for live components; it leaves the link to the text around it. */
export default function Known({ known }: { known: HowKnown }) {
  return <small class="known">{knownMarks[known].short}</small>;
}
