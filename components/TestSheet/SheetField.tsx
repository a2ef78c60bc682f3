import type { Input } from '../../lib/calculation.ts';
import { type System, unitFor, unitSign } from '../../lib/units.ts';

interface Props {
  id: string;
  input: Input;
  value: string;
  problem: string | undefined;
  /** What can be worked out but should not stand; it does not make the field wrong. */
  warning?: string | undefined;
  system: System;
  onText(text: string): void;
}

/** A box or a list to choose from, with its trouble said beside it. */
export default function SheetField({ id, input, value, problem, warning, system, onText }: Props) {
  const unit =
    'printed' in input
      ? input.printed[system]
      : 'unit' in input && input.unit !== '1'
        ? unitFor(input.unit, system)
        : undefined;
  const shared = {
    id,
    value,
    'aria-describedby': `${id}-problem`,
    'aria-invalid': problem ? ('true' as const) : undefined,
  };
  return (
    <div class="field">
      <label for={id}>
        {input.label}
        {unit && ` (${unitSign(unit)})`}
        {'date' in input && ' (year-month-day)'}
      </label>
      {'choices' in input ? (
        <select {...shared} onChange={(event) => onText(event.currentTarget.value)}>
          {(input.optional || !input.choices.includes(value)) && <option value="">–</option>}
          {input.choices.map((choice) => (
            <option key={choice} value={choice}>
              {choice}
            </option>
          ))}
        </select>
      ) : (
        <input
          {...shared}
          type="text"
          autocomplete="off"
          spellcheck={false}
          maxLength={60}
          onInput={(event) => onText(event.currentTarget.value)}
        />
      )}
      <p class="problem" id={`${id}-problem`} role="status">
        {problem ?? warning}
      </p>
    </div>
  );
}
