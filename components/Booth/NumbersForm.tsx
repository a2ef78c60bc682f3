import type { Booth } from '../../lib/booth/booth-link.ts';
import { shownBoothNumber } from '../../lib/booth/booth-number.ts';
import {
  type BoothWordInLink,
  boothQuantities,
  boothQuantity,
  isOfRoot,
} from '../../lib/booth/booth-quantities.ts';
import type { ExerciseSheet } from '../../lib/booth/exercise-sheet.ts';
import { type System, unitFor, unitSign } from '../../lib/units.ts';
import Said from '../Reasons/Said.tsx';
import type { Task } from './desk-address.ts';
import { hasRoot, outOfRange } from './out-of-range.ts';
import { wordLabel } from './word-label.ts';

interface Props {
  typed: Task['typed'];
  system: System;
  problems: Partial<Record<string, string>>;
  /** Undefined for a lesson alone, and until the exercise is there. */
  exercise: ExerciseSheet | undefined;
  booth: Booth | undefined;
  onType(typed: Task['typed']): void;
}

const words = Object.keys(boothQuantities) as BoothWordInLink[];

/** What a booth uses, a box for each; those of the root where a joint has an electrode for it. */
export default function NumbersForm({ typed, system, problems, exercise, booth, onType }: Props) {
  const rooted = exercise !== undefined && hasRoot(exercise);
  const shown = words.filter((word) => !isOfRoot(word) || rooted || typed[word]);
  return (
    <fieldset>
      <legend>
        <h2>What this booth uses</h2>
      </legend>
      <p class="quiet">
        Leave a box empty, and the lesson’s own number stands.
        {rooted &&
          ' This joint has one electrode for the root and another to fill it: each has its boxes.'}
      </p>
      <div class="booth-numbers">
        {shown.map((word) => {
          const it = boothQuantity(word);
          const id = `booth-${word}`;
          const usual = exercise?.usual[word];
          const problem = problems[word];
          const range =
            (word === 'current' || word === 'rootcurrent') && !problem && exercise && booth
              ? outOfRange(exercise, booth, word)
              : undefined;
          const field = {
            id,
            value: typed[word] ?? '',
            'aria-describedby': `${id}-problem`,
          };
          const change = (text: string) => onType({ ...typed, [word]: text });
          return (
            <div key={word} class="field">
              <label for={id}>
                {wordLabel(word, rooted)}
                {'unit' in it && ` (${unitSign(unitFor(it.unit, system))})`}
              </label>
              {'choices' in it ? (
                <select {...field} onChange={(event) => change(event.currentTarget.value)}>
                  <option value="">as in the lesson</option>
                  {it.choices.map((choice) => (
                    <option key={choice} value={choice}>
                      {choice}
                    </option>
                  ))}
                </select>
              ) : (
                <input
                  {...field}
                  type="text"
                  autocomplete="off"
                  spellcheck={false}
                  placeholder={
                    usual ? shownBoothNumber(word, usual.replace(' ', ''))[system] : undefined
                  }
                  aria-invalid={problem !== undefined}
                  onInput={(event) => change(event.currentTarget.value)}
                />
              )}
              <p class="problem" id={`${id}-problem`}>
                {problem && <Said text={problem} />}
                {range}
              </p>
            </div>
          );
        })}
      </div>
    </fieldset>
  );
}
