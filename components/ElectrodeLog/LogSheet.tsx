import { countedBy } from '../../lib/electrode-log/counted-by.ts';
import type { LogSheet as Sheet } from '../../lib/electrode-log/log-sheet.ts';
import { scrollingBox } from '../Page/scrolling-box.ts';
import CitationNote from '../Reasons/CitationNote.tsx';
import Said from '../Reasons/Said.tsx';

const holderColumns = ['Holder', 'Electrode', 'Open air', 'State', 'Mind'];
const rowColumns = ['Day', 'Time', 'Holder', 'What happened', 'Oven', 'For', 'Clock after', 'By'];
/** Ruled rows to write in by hand. */
const blank = { holders: 5, rows: 13, after: 4 };

/** Every holder, and what happened to it: filled in, or ruled for the pen. */
export default function LogSheet({ sheet }: { sheet?: Sheet | undefined }) {
  const holders = sheet
    ? sheet.holders.map(({ name, electrode, limit, state, until, earlier }) => [
        name,
        electrode,
        limit,
        earlier > 0 ? `${state} (${earlier} earlier rows)` : state,
        until,
      ])
    : [];
  const rows = sheet
    ? sheet.rows.map((row) => [
        row.day,
        row.time,
        row.holder,
        row.event,
        row.oven,
        row.hours,
        row.clock,
        row.by,
      ])
    : [];
  return (
    <article class="log-sheet" aria-label="Log sheet">
      <p>
        {sheet
          ? `As it stood on ${sheet.day} at ${sheet.time}, clock of ${sheet.zone.replaceAll('_', ' ')}.`
          : 'Shop and evening: '}
      </p>
      <Grid
        caption="Holders"
        columns={holderColumns}
        rows={holders}
        free={sheet ? 0 : blank.holders}
      />
      <Grid
        caption="What happened"
        columns={rowColumns}
        rows={rows}
        free={sheet ? blank.after : blank.rows}
      />
      <ul class="log-rules">
        {countedBy.map(({ text, cite }) => (
          <li key={text}>
            <Said text={text} /> {cite && <CitationNote {...cite} />}
          </li>
        ))}
      </ul>
    </article>
  );
}

interface GridProps {
  caption: string;
  columns: readonly string[];
  rows: readonly (readonly string[])[];
  /** Ruled rows below them, for the pen. */
  free: number;
}

function Grid({ caption, columns, rows, free }: GridProps) {
  return (
    <div class="scroll" {...scrollingBox(caption)}>
      <table class={columns === rowColumns ? 'log-what' : undefined}>
        <caption>{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, place) => (
            <tr key={place}>
              {row.map((cell, column) => (
                <td key={columns[column]}>{cell}</td>
              ))}
            </tr>
          ))}
          {Array.from({ length: free }, (_, place) => (
            <tr key={`free ${place}`} class="log-ruled">
              {columns.map((column) => (
                <td key={column} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
