import type { ChoiceInput } from '../../lib/calculation.ts';
import type { FieldProps } from '../Calculator/Field.tsx';
import FieldFrame from './FieldFrame.tsx';

type Props = FieldProps & { input: ChoiceInput };

/** One of a few words. A word from a link that is not among them is kept and shown. */
export default function ChoiceField(props: Props) {
  const { id, input, entry, given, system, problems, onEntry } = props;
  const opened = String(given ?? (input.optional ? '' : (input.default ?? input.example)));
  const text = entry && 'text' in entry ? entry.text : opened;
  const known = input.choices.find((choice) => choice.toLowerCase() === text.trim().toLowerCase());
  return (
    <FieldFrame {...props}>
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
    </FieldFrame>
  );
}
