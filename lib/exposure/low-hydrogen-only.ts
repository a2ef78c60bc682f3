/**
 * Refuses oven and exposure questions about electrodes that are not low-hydrogen: an oven spoils
 * some of them, and no code counts their hours.
 */
import type { designators } from '../inputs/classification.ts';
import { NoAnswer } from '../no-answer.ts';
import { readDigits } from '../tables/electrodes-a5.1.ts';
import { type ExposedElectrode, isLowAlloy } from '../tables/exposure-d1.1.ts';

/** Throws NoAnswer where the question has no answer for this electrode; otherwise does nothing. */
export function refuseOvenAdvice(
  classification: ExposedElectrode,
  designator: (typeof designators)[number],
): void {
  if (isLowAlloy(classification)) return;
  const { covering } = readDigits(classification);
  if (covering.fNumber === 'F3')
    throw new NoAnswer(
      `${classification} has a cellulose covering, which needs its moisture to burn as it should. Never put it in an electrode oven: keep it in its can, dry, at room temperature`,
      'classification',
    );
  if (!covering.lowHydrogen)
    throw new NoAnswer(
      `${classification} is not a low-hydrogen electrode, so no code counts its hours in open air. Keep it dry; the box label says how`,
      'classification',
    );
  if (classification === 'E7018M' && designator === 'R')
    throw new NoAnswer('The M of E7018M stands for the same test: no R follows it', 'designator');
}
