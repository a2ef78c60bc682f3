/** The line of symbols and the line of numbers of each output, filled for both readers. */
import type { Answer } from '../../lib/answer.ts';
import type { Formula } from '../../lib/calculation.ts';
import { slotTexts } from '../../lib/text/slot-texts.ts';
import { typeset } from './typeset.ts';

export function filledLines(
  formula: Formula,
  by: { us: Answer; metric: Answer },
): Record<string, string> {
  const texts = {
    us: slotTexts(formula, by.us, 'us'),
    metric: slotTexts(formula, by.metric, 'metric'),
  };
  return Object.fromEntries(
    typeset(formula).map(({ output, symbols, numbers }) => [
      output,
      symbols +
        numbers.replace(
          /<mtext class="(us|metric)" data-in="(=?\w+)"><\/mtext>/g,
          (_, system: 'us' | 'metric', name: string) =>
            `<mtext class="${system}" data-in="${name}">${texts[system][output]?.[name] ?? ''}</mtext>`,
        ),
    ]),
  );
}
