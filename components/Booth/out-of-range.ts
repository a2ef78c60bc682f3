import type { Booth } from '../../lib/booth/booth-link.ts';
import type { ExerciseSheet } from '../../lib/booth/exercise-sheet.ts';
import { readQuantity } from '../../lib/text/quantity-text.ts';

/** A sentence where the booth's current leaves what the exercise's procedure allows. */
export function outOfRange(sheet: ExerciseSheet, { numbers }: Booth): string | undefined {
  const { current } = numbers;
  if (!current || sheet.currents.length === 0) return undefined;
  const amperes = (text: string) => {
    const read = readQuantity(text, 'A');
    return 'problem' in read ? Number.NaN : read.value;
  };
  const set = amperes(current);
  const inside = sheet.currents.some(
    ({ low, high }) => set >= amperes(low) && set <= amperes(high),
  );
  if (inside) return undefined;
  const ranges = sheet.currents.map(({ low, high }) => `${low} to ${high}`).join(' or ');
  return `The practice procedure of this exercise allows ${ranges}. Outside that, the label on the electrode box rules`;
}
