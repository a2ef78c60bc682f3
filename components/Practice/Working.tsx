import type { Answer } from '../../lib/answer.ts';
import type { Asked } from '../../lib/practice/asked.ts';
import { legend, numbersText, ruleText } from '../../lib/practice/rule-text.ts';
import { speak } from '../../lib/text/say.ts';

interface Props {
  asked: Asked;
  found: Answer;
  /** Also the numbers put in, or the rows that were used. */
  numbers: boolean;
}

/** The way to an answer: the rule, then the numbers in it; for a look-up, what it answers and its rows. */
export default function Working({ asked, found, numbers }: Props) {
  const { calculation, want, system } = asked;
  if (calculation.kind === 'procedure')
    return (
      <>
        <p>{speak(calculation.summary, system)}</p>
        {numbers && (
          <ul class="reasons">
            {found.because.map(({ text }) => (
              <li key={text}>{speak(text, system)}</li>
            ))}
          </ul>
        )}
      </>
    );
  return (
    <>
      <p>{ruleText(calculation, want)}</p>
      <p class="quiet">{legend(calculation, want).join('; ')}</p>
      {numbers && <p>= {numbersText(calculation, found, want, system)}</p>}
    </>
  );
}
