/** Answers at build for both readers, or stops the build with what is wrong. */
import { type Answer, answer, type Typed } from '../../lib/answer.ts';
import type { Calculation } from '../../lib/calculation.ts';
import { speak } from '../../lib/text/say.ts';
import { typedFor } from './entries.ts';

export function answerKnown(
  id: string,
  calculation: Calculation,
  given: Typed,
  page: string,
): { us: Answer; metric: Answer } {
  const strays = Object.keys(given).filter((name) => !Object.hasOwn(calculation.inputs, name));
  if (strays.length > 0)
    throw new Error(
      `${page}: ${id} has no input ${strays.join(', ')}; known: ${Object.keys(calculation.inputs).join(', ')}`,
    );
  const inSystem = (system: 'us' | 'metric'): Answer => {
    const answered = answer(calculation, typedFor(calculation.inputs, {}, given, system));
    if (answered.ok) return answered;
    const texts = answered.problems.map(({ field, text }) => `${field}: ${speak(text, 'us')}`);
    throw new Error(`${page}: ${id} cannot be computed: ${texts.join('; ')}`);
  };
  return { us: inSystem('us'), metric: inSystem('metric') };
}
