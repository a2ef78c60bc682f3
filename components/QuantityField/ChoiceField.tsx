import type { ChoiceInput } from '../../lib/calculation.ts';
import type { FieldProps } from '../Calculator/Field.tsx';
import Kept from './Kept.tsx';
import Problems from './Problems.tsx';

type Props = FieldProps & { input: ChoiceInput };

/** One of a few words. A word from a link that is not among them is kept and shown. */
export default function ChoiceField({
  id,
  input,
  entry,
  given,
  system,
  problems,
  texts,
  onEntry,
}: Props) {
  const opened = String(given ?? (input.optional ? '' : (input.default ?? input.example)));
  const text = entry && 'text' in entry ? entry.text : opened;
  const known = input.choices.find((choice) => choice.toLowerCase() === text.trim().toLowerCase());
  return (
    <div class="field">
      <Kept as="label" for={id} html={texts?.label} />
      <select
        id={id}
        value={known ?? text}
        data-opened={opened}
        aria-describedby={`${id}-problem`}
        aria-invalid={problems.length > 0}
        onChange={(event) => onEntry({ text: event.currentTarget.value, system })}
      >
        {input.optional && <option value="">not said</option>}
        {known === undefined && text !== '' && <option value={text}>{text.slice(0, 40)}</option>}
        {input.choices.map((choice) => (
          <option key={choice} value={choice} selected={choice === known}>
            {choice}
          </option>
        ))}
      </select>
      <Problems id={`${id}-problem`} problems={problems} system={system} />
      <Kept as="div" html={texts?.help} />
    </div>
  );
}
