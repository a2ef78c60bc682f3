import type { ListInput } from '../../lib/calculation.ts';
import type { Row } from '../Calculator/entries.ts';
import type { FieldProps } from '../Calculator/Field.tsx';
import Kept from './Kept.tsx';
import Problems from './Problems.tsx';

type Props = FieldProps & { input: ListInput };

/** Rows of the same shape, such as the pieces of a cut list. Cells are text with their units. */
export default function RowsField({
  id,
  input,
  entry,
  given,
  system,
  problems,
  texts,
  onEntry,
}: Props) {
  const opened = (Array.isArray(given) ? given : input.optional ? [] : input.example) as Row[];
  const rows = entry && 'rows' in entry ? entry.rows : opened;
  const columns = Object.entries(input.list);
  const put = (next: Row[]) => onEntry({ rows: next });
  const set = (at: number, column: string, text: string) =>
    put(rows.map((row, index) => (index === at ? { ...row, [column]: text } : row)));
  return (
    <fieldset class="field rows" id={id}>
      <Kept as="legend" html={texts?.label} />
      {rows.map((row, index) => (
        <div class="row" key={index}>
          {columns.map(([column, cell]) => {
            const box = `${id}-${index + 1}-${column}`;
            const invalid = problems.some(({ field }) => field.endsWith(`.${index + 1}.${column}`));
            return (
              <label key={column}>
                <small>{cell.label}</small>
                {'choices' in cell ? (
                  <select
                    id={box}
                    value={row[column] ?? ''}
                    aria-invalid={invalid}
                    onChange={(event) => set(index, column, event.currentTarget.value)}
                  >
                    {cell.optional && <option value="">–</option>}
                    {cell.choices.map((choice) => (
                      <option key={choice} value={choice} selected={choice === row[column]}>
                        {choice}
                      </option>
                    ))}
                  </select>
                ) : (
                  <input
                    id={box}
                    type="text"
                    autocomplete="off"
                    value={row[column] ?? ''}
                    aria-invalid={invalid}
                    onInput={(event) => set(index, column, event.currentTarget.value)}
                  />
                )}
              </label>
            );
          })}
          <button
            type="button"
            aria-label={`Take out row ${index + 1}`}
            onClick={() => put(rows.filter((_, at) => at !== index))}
          >
            ✕
          </button>
        </div>
      ))}
      <button
        type="button"
        onClick={() => put([...rows, { ...(rows.at(-1) ?? input.example[0]) } as Row])}
      >
        Add a row
      </button>
      <Problems id={`${id}-problem`} problems={problems} system={system} />
      <Kept as="div" html={texts?.help} />
    </fieldset>
  );
}
