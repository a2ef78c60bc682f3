/**
 * Judges what a reader typed for one step against the computed value, and says which slip fits.
 * Right is what lies within two parts in a hundred, what rounds as the page's own answers do, and
 * the practical size where one is given. Counts must be exact.
 */
import { practical, shown } from '../text/shown.ts';
import { convert, type Unit } from '../units.ts';
import { type Asked, numberOf, outputOf, tolerance, unitAsked, wordsOf } from './asked.ts';
import { isCount, numberIn, readIn } from './read-answer.ts';

export interface Judged {
  right: boolean;
  /** A sentence for the reader. */
  said: string;
}

/** What fits a wrong number is fetched when there is one. */
export async function judge(asked: Asked, text: string): Promise<Judged> {
  const { results, want, system } = asked;
  const output = outputOf(asked);
  const result = results[want];
  if (text.trim() === '') return no('Your answer is empty.');
  const words = wordsOf(asked);
  if (words) return judgeWord(text, shown(output, result, system), words);
  const bare = unitAsked(asked);
  const reading = readIn(text, bare);
  if ('problem' in reading) return no(`Your answer ${reading.problem}.`);
  // A table that prints both systems has a figure of its own for each.
  const unit =
    'printed' in output && Object.values(output.printed).includes(reading.unit)
      ? reading.unit
      : bare;
  const value = convert(reading.value, reading.unit, unit);
  const computed = numberOf(output, result, unit) as number;
  const answer = shown(output, result, system);
  const size = practical(output, result, system);
  const yes: Judged = { right: true, said: `Right: ${answer}${size ? `, so ${size}` : ''}.` };
  if (isCount(output, computed) && value === computed) return yes;
  if (!isCount(output, computed)) {
    if (Math.abs(value - computed) <= allowance(computed, answer, unit)) return yes;
    if (size !== undefined) {
      const step = numberIn(size, unit);
      if (Math.abs(value - step) <= 1e-9 * Math.abs(step)) return yes;
    }
  }
  const { whyWrong } = await import('./why-wrong.ts');
  return no(whyWrong(asked, value, computed, unit, reading));
}

function judgeWord(text: string, right: string, words: readonly string[]): Judged {
  const typed = text.trim().toLowerCase();
  if (typed === right.toLowerCase()) return { right: true, said: `Right: ${right}.` };
  return words.some((word) => word.toLowerCase() === typed)
    ? no('Not this one. The hint shows the rule that decides.')
    : no(`Your answer needs one of these: ${words.join(', ')}.`);
}

const no = (said: string): Judged => ({ right: false, said });

/** Two parts in a hundred, or half a unit of the last figure that the page shows. */
function allowance(computed: number, answer: string, unit: Unit): number {
  const share = Math.abs(computed) * tolerance;
  const printed = numberIn(answer, unit);
  const rounding = Number.isNaN(printed) ? 0 : Math.abs(printed - computed);
  return Math.max(share, rounding) * (1 + 1e-9) + 1e-12;
}
