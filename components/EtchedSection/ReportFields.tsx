import { type System, unitFor } from '../../lib/units.ts';
import type { Worked } from './bench-state.ts';
import Choice from './Choice.tsx';
import { type LengthName, lengthText } from './lengths.ts';
import type { Picture } from './picture.ts';

interface HeadProps {
  picture: Picture;
  slice: string;
  kept: string;
  onSlice(slice: string): void;
  onPutAway(): void;
  /** Only where the picture is a sample. */
  onMarkSample: (() => void) | undefined;
}

/** Which slice this is, what is kept of it, and the lines that are filled in by hand on paper. */
export function SliceHead({ picture, slice, kept, onSlice, onPutAway, onMarkSample }: HeadProps) {
  return (
    <>
      <div class="field">
        <label for="section-slice">Slice</label>
        <input
          id="section-slice"
          type="text"
          autocomplete="off"
          maxLength={200}
          value={slice}
          aria-describedby="section-slice-hint"
          onInput={(event) => onSlice(event.currentTarget.value)}
        />
        <p class="field-range" id="section-slice-hint">
          Its number, for the report. The picture is {picture.name}.
        </p>
      </div>
      <p class="quiet screen-only" role="status">
        {kept}
      </p>
      <p class="calculator-actions screen-only">
        {onMarkSample && (
          <button type="button" onClick={onMarkSample}>
            Mark the sample for me
          </button>
        )}
        <button type="button" onClick={onPutAway}>
          Put it away
        </button>
      </p>
      <ul class="print-only section-blanks">
        <li>Date</li>
        <li>Welded by</li>
        <li>Measured by</li>
        <li>Finest grit</li>
        <li>Etchant and time</li>
        <li>Checked by</li>
      </ul>
    </>
  );
}

interface PassesProps {
  text: string;
  marked: number;
  problem: string;
  onText(text: string): void;
}

/** The number of passes, where somebody counted them while welding. */
export function PassesBox({ text, marked, problem, onText }: PassesProps) {
  return (
    <div class="field">
      <label for="section-passes">Passes</label>
      <input
        id="section-passes"
        type="text"
        inputMode="numeric"
        autocomplete="off"
        maxLength={10}
        value={text}
        aria-describedby="section-passes-hint section-passes-problem"
        aria-invalid={problem !== ''}
        onInput={(event) => onText(event.currentTarget.value)}
      />
      <p class="problem" id="section-passes-problem" role="status">
        {problem && `${problem}.`}
      </p>
      <p class="field-range" id="section-passes-hint">
        Leave it empty to take the {marked} that you marked.
      </p>
    </div>
  );
}

/** How far a mark may be off. */
export function Edge({
  edge,
  onEdge,
}: {
  edge: Worked['edge'];
  onEdge(edge: Worked['edge']): void;
}) {
  return (
    <div class="screen-only">
      <Choice<Worked['edge']>
        id="section-edge"
        label="How sharp are the edges you mark?"
        value={edge}
        choices={[
          ['1', 'Sharp: a mark is good to 1 pixel'],
          ['2', 'Fair: good to 2 pixels'],
          ['4', 'Soft: good to 4 pixels'],
        ]}
        hint="In pixels of the picture as it was taken. Set one toe five times over: half of the spread is what a mark is good to."
        onChoice={onEdge}
      />
    </div>
  );
}

/** What the readings rest on, in a sentence. */
export function Basis({ worked, system }: { worked: Worked; system: System }) {
  const { by, lengths, edge } = worked;
  const text = (name: LengthName) => lengthText(lengths[name], system);
  const unit = unitFor('mm', system);
  const scale =
    by === 'distance'
      ? `two points ${text('length')} ${unit} apart`
      : `the corners of a rectangle of ${text('width')} by ${text('height')} ${unit}`;
  return (
    <p class="quiet">
      Scale from {scale}, give or take {text('lengthError')} {unit}; each mark is good to {edge} of
      the picture’s pixels. The true size lies within what is given and taken in at least 95 of 100
      sections.
    </p>
  );
}
