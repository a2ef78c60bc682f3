import Said from '../Reasons/Said.tsx';

interface Props {
  id: string;
  label: string;
  /** Read aloud with the label, where the label alone would not tell whose box it is. */
  of?: string;
  value: string;
  /** What stands for an empty box. */
  placeholder?: string;
  unit?: string;
  hint?: string;
  problem?: string | undefined;
  onText(text: string): void;
}

/** A box with its label, its hint and what is wrong with it. */
export default function TypedBox(props: Props) {
  const { id, label, of, value, placeholder, unit, hint, problem, onText } = props;
  return (
    <div class="plan-box">
      <label for={id}>
        {label}
        {of && <span class="unseen"> {of}</span>}
        {unit && <small>, {unit}</small>}
      </label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        spellcheck={false}
        value={value}
        placeholder={placeholder}
        aria-invalid={problem !== undefined}
        aria-describedby={`${id}-problem${hint ? ` ${id}-hint` : ''}`}
        onInput={(event) => onText(event.currentTarget.value)}
      />
      <p class="problem" id={`${id}-problem`} role="status">
        {problem && (
          <>
            <Said text={problem} />.
          </>
        )}
      </p>
      {hint && (
        <p class="field-range" id={`${id}-hint`}>
          <Said text={hint} />
        </p>
      )}
    </div>
  );
}
