import { Component } from 'preact';
import type { DateInput, PrintedInput, QuantityInput } from '../../lib/calculation.ts';
import { type System, unitFor, unitSign } from '../../lib/units.ts';
import { boxText, declaredUnit, opening } from '../Calculator/entries.ts';
import type { FieldProps } from '../Calculator/Field.tsx';
import Both from '../Units/Both.tsx';
import Kept from './Kept.tsx';
import Problems from './Problems.tsx';

type Props = FieldProps & { input: QuantityInput | PrintedInput | DateInput };

/** A box for a number, a fraction, a number with its unit, or a day. */
export default class QuantityField extends Component<Props, { letters: boolean }> {
  override state = { letters: false };

  override render() {
    const { id, input, entry, given, system, problems, texts, onEntry } = this.props;
    const { letters } = this.state;
    const opened = { us: opening(input, given, 'us'), metric: opening(input, given, 'metric') };
    const text =
      entry && 'text' in entry
        ? entry.system === system
          ? entry.text
          : boxText(input, entry.text, entry.system, system)
        : opened[system];
    const declared = declaredUnit(input);
    const shown = (reader: System) => (declared ? unitSign(unitFor(declared, reader)) : '');
    return (
      <div class="field">
        <Kept as="label" for={id} html={texts?.label} />
        <div class="field-box">
          <input
            id={id}
            type="text"
            inputMode={letters || !declared ? 'text' : 'decimal'}
            autocomplete="off"
            spellcheck={false}
            value={text}
            data-us={opened.us}
            data-metric={opened.metric}
            aria-describedby={`${id}-range ${id}-problem`}
            aria-invalid={problems.length > 0}
            onInput={(event) => onEntry({ text: event.currentTarget.value, system })}
          />
          <span class="field-unit" aria-hidden="true">
            <Both us={shown('us')} metric={shown('metric')} />
          </span>
          {declared === 'in' && (
            <button
              type="button"
              class="field-letters us"
              aria-pressed={letters}
              onClick={() => this.setState({ letters: !letters })}
            >
              <span aria-hidden="true">a/b</span>
              <span class="unseen">Keyboard with a slash, for fractions</span>
            </button>
          )}
        </div>
        <Problems id={`${id}-problem`} problems={problems} system={system} />
        <Kept as="div" html={texts?.help} />
      </div>
    );
  }
}
