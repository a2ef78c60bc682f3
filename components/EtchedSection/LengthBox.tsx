import { speak } from '../../lib/text/say.ts';
import { type System, unitFor } from '../../lib/units.ts';
import {
  type LengthEntry,
  type LengthName,
  lengthFields,
  lengthText,
  readLength,
} from './lengths.ts';

interface Props {
  name: LengthName;
  entry: LengthEntry;
  system: System;
  /** Instead of the field's own. */
  hint?: string | undefined;
  onEntry(entry: LengthEntry): void;
}

/** A box for a length; its problem stands under it. */
export default function LengthBox({ name, entry, system, hint, onEntry }: Props) {
  const { label } = lengthFields[name];
  const read = readLength(name, entry);
  const problem = read && 'problem' in read ? read.problem : '';
  const id = `section-${name}`;
  return (
    <div class="field">
      <label for={id}>
        {label}
        <small>, in {system === 'us' ? 'inches' : 'millimeters'}</small>
      </label>
      <div class="field-box">
        <input
          id={id}
          type="text"
          autocomplete="off"
          spellcheck={false}
          value={lengthText(entry, system)}
          aria-describedby={`${id}-hint ${id}-problem`}
          aria-invalid={problem !== ''}
          onInput={(event) => onEntry({ text: event.currentTarget.value, system })}
        />
        <span class="field-unit" aria-hidden="true">
          {unitFor('mm', system)}
        </span>
      </div>
      <p class="problem" id={`${id}-problem`} role="status">
        {problem && `${problem}.`}
      </p>
      <p class="field-range" id={`${id}-hint`}>
        {speak(hint ?? lengthFields[name].hint, system)}
      </p>
    </div>
  );
}
