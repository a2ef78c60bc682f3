import { toleranceText } from '../../lib/practice/asked.ts';
import type { SetProblem } from '../../lib/practice/problem-set.ts';
import { speak } from '../../lib/text/say.ts';
import type { System } from '../../lib/units.ts';
import Working from '../Practice/Working.tsx';
import { answerText } from '../WorkedExample/answer-text.ts';

interface Props {
  set: number;
  problems: readonly SetProblem[];
  system: System;
}

/** The sheet to hand out and, on a sheet of its own, the key with the whole way to each answer. */
export default function ProblemSheets({ set, problems, system }: Props) {
  const withWays = problems.map((one) => ({
    ...one,
    asked: {
      calculation: one.calculation,
      typed: one.typed,
      results: one.found.results,
      want: one.want,
      system,
    },
  }));
  return (
    <>
      <section class="problem-sheet" id="problem-sheet" aria-labelledby="problems-title">
        <h2 id="problems-title">Problem set {set}</h2>
        <p class="problem-name">
          <span>Learner</span> <span>Date</span>
        </p>
        <ol>
          {problems.map(({ text, output }, place) => (
            <li key={place}>
              <p>{speak(text, system)}</p>
              <p class="problem-line">
                <span class="quiet">{output.label}</span>
              </p>
            </li>
          ))}
        </ol>
        <p class="quiet">{toleranceText}</p>
      </section>
      <section class="problem-sheet" id="problem-key" aria-labelledby="key-title">
        <h2 id="key-title">Answer key, set {set}</h2>
        <ol>
          {withWays.map(({ asked, found, output, want, text, calculation }, place) => (
            <li key={place} class="problem-answer">
              <p>
                <strong>
                  {output.label}: {answerText(output, want, found, system)}
                </strong>{' '}
                <span class="quiet">({calculation.title})</span>
              </p>
              <p class="quiet">{speak(text, system)}</p>
              <Working asked={asked} found={found} numbers />
            </li>
          ))}
        </ol>
        <p>
          These are numbers on paper. At the booth the welding procedure and your instructor come
          first.
        </p>
      </section>
    </>
  );
}
