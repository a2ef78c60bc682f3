import type { Choice, TypedWhen } from '../../lib/electrode-log/read-when.ts';

interface Props {
  id: string;
  value: TypedWhen;
  /** Where the hour comes twice. */
  twice?: readonly Choice[] | undefined;
  problem?: { field: string; text: string } | undefined;
  onWhen(next: TypedWhen): void;
}

/** Day and time on the wall, and which of two where clocks go back. */
export default function WhenBoxes({ id, value, twice, problem, onWhen }: Props) {
  const said = (field: string) => (problem?.field === field ? problem.text : undefined);
  const box = (field: 'day' | 'time', label: string, type: 'date' | 'time') => (
    <div class="plan-box">
      <label for={`${id}-${field}`}>{label}</label>
      <input
        id={`${id}-${field}`}
        type={type}
        value={value[field]}
        aria-invalid={said(field) !== undefined}
        aria-describedby={`${id}-${field}-problem`}
        onInput={(event) => onWhen({ ...value, [field]: event.currentTarget.value })}
      />
      <p class="problem" id={`${id}-${field}-problem`} role="status">
        {said(field) && `${said(field)}.`}
      </p>
    </div>
  );
  return (
    <>
      {box('day', 'Day', 'date')}
      {box('time', 'Time', 'time')}
      {twice && (
        <div class="plan-box">
          <label for={`${id}-which`}>Which one</label>
          <select
            id={`${id}-which`}
            value={value.which ?? ''}
            aria-invalid={said('which') !== undefined}
            aria-describedby={`${id}-which-problem`}
            onChange={(event) => onWhen({ ...value, which: event.currentTarget.value })}
          >
            <option value="">–</option>
            {twice.map(({ which, words }) => (
              <option key={which} value={which} selected={which === value.which}>
                {words}
              </option>
            ))}
          </select>
          <p class="problem" id={`${id}-which-problem`} role="status">
            {said('which') && `${said('which')}.`}
          </p>
        </div>
      )}
    </>
  );
}
