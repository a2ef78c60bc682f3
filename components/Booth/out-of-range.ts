import type { Booth } from '../../lib/booth/booth-link.ts';
import type { ExerciseSheet } from '../../lib/booth/exercise-sheet.ts';
import { readQuantity } from '../../lib/text/quantity-text.ts';

/** Has the joint an electrode of its own for its root? */
export const hasRoot = ({ currents }: ExerciseSheet): boolean =>
  currents.some(({ root }) => root) && currents.some(({ root }) => !root);

/** A sentence where a current of the booth leaves what the exercise's procedure allows. */
export function outOfRange(
  sheet: ExerciseSheet,
  { numbers }: Booth,
  word: 'current' | 'rootcurrent',
): string | undefined {
  const current = numbers[word];
  const allowed = hasRoot(sheet)
    ? sheet.currents.filter(({ root = false }) => root === (word === 'rootcurrent'))
    : sheet.currents;
  if (!current || allowed.length === 0) return undefined;
  const amperes = (text: string) => {
    const read = readQuantity(text, 'A');
    return 'problem' in read ? Number.NaN : read.value;
  };
  const set = amperes(current);
  if (allowed.some(({ low, high }) => set >= amperes(low) && set <= amperes(high)))
    return undefined;
  const ranges = allowed.map(({ low, high }) => `${low} to ${high}`).join(' or ');
  return `The practice procedure of this exercise allows ${ranges}. Outside that, the label on the electrode box rules`;
}
