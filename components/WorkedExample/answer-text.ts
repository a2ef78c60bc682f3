import type { Answer } from '../../lib/answer.ts';
import type { Output } from '../../lib/calculation.ts';
import { practical, shown } from '../../lib/text/shown.ts';
import type { System } from '../../lib/units.ts';

/** An answer for one reader, with the practical size after it where there is one. */
export function answerText(
  output: Output,
  name: string,
  { results }: Answer,
  system: System,
): string {
  const size = practical(output, results[name], system);
  return shown(output, results[name], system) + (size ? ` → ${size}` : '');
}

/** Lists and shapes have no one text. */
export const hasText = (output: Output): boolean => !('shape' in output) && !('list' in output);
