interface Props<T extends string> {
  id: string;
  label: string;
  value: T;
  choices: readonly (readonly [value: T, text: string])[];
  hint?: string;
  onChoice(value: T): void;
}

/** One of a few, as a native list: it works the same by finger, key and voice. */
export default function Choice<T extends string>(props: Props<T>) {
  const { id, label, value, choices, hint, onChoice } = props;
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value}
        aria-describedby={hint ? `${id}-hint` : undefined}
        onChange={(event) => onChoice(event.currentTarget.value as T)}
      >
        {choices.map(([choice, text]) => (
          <option key={choice} value={choice}>
            {text}
          </option>
        ))}
      </select>
      {hint && (
        <p class="field-range" id={`${id}-hint`}>
          {hint}
        </p>
      )}
    </div>
  );
}
