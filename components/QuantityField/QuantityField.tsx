import { useState } from 'preact/hooks';
import type { PrintedInput, QuantityInput } from '../../lib/calculation.ts';
import { unitFor, unitOf } from '../../lib/units.ts';
import { boxText, opening } from '../Calculator/entries.ts';
import type { FieldProps } from '../Calculator/Field.tsx';
import Both from '../Units/Both.tsx';
import Obtain from './Obtain.tsx';
import Problems from './Problems.tsx';
import Range from './Range.tsx';

type Props = FieldProps & { input: QuantityInput | PrintedInput };

/** A size: label with the unit in words, limits, a box for a number, fraction or number with unit. */
export default function QuantityField({
  id,
  input,
  entry,
  given,
  system,
  problems,
  onEntry,
}: Props) {
  const [letters, setLetters] = useState(false);
  const us = opening(input, given, 'us');
  const metric = opening(input, given, 'metric');
  const untouched = system === 'us' ? us : metric;
  const text =
    entry && 'text' in entry
      ? entry.system === system
        ? entry.text
        : boxText(input, entry.text, entry.system, system)
      : untouched;
  const declared = 'printed' in input ? input.printed.us : input.unit;
  const inUnit = (reader: 'us' | 'metric') => unitOf(unitFor(declared, reader));
  const words = (reader: 'us' | 'metric') =>
    inUnit(reader).words === '' ? '' : `, in ${inUnit(reader).words}`;
  return (
    <div class="field">
      <label for={id}>
        {input.label}
        <small>
          <Both us={words('us')} metric={words('metric')} />
        </small>
      </label>
      <div class="field-box">
        <input
          id={id}
          type="text"
          inputMode={letters ? 'text' : 'decimal'}
          autocomplete="off"
          spellcheck={false}
          value={text}
          data-us={us}
          data-metric={metric}
          aria-describedby={`${id}-range ${id}-problem`}
          aria-invalid={problems.length > 0}
          onInput={(event) => onEntry({ text: event.currentTarget.value, system })}
        />
        <span class="field-unit" aria-hidden="true">
          <Both us={inUnit('us').shown} metric={inUnit('metric').shown} />
        </span>
        {declared === 'in' && (
          <button
            type="button"
            class="field-letters us"
            aria-pressed={letters}
            aria-controls={id}
            title="Keyboard with a slash, for fractions"
            onClick={() => setLetters(!letters)}
          >
            <span aria-hidden="true">a/b</span>
            <span class="unseen">Keyboard for fractions</span>
          </button>
        )}
      </div>
      <Range id={`${id}-range`} input={input} />
      <Problems id={`${id}-problem`} problems={problems} system={system} />
      <Obtain text={input.obtain} by={input.estimateBy} />
    </div>
  );
}
