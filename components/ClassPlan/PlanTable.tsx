import type { ComponentChildren } from 'preact';
import { scrollingBox } from '../Page/scrolling-box.ts';

interface Props {
  caption: string;
  /** Column names; those of numbers end in a bar, `Bars|`. */
  columns: readonly string[];
  rows: readonly (readonly ComponentChildren[])[];
}

/** A table whose first cell names its row. Wider than the screen, it scrolls in its own box. */
export default function PlanTable({ caption, columns, rows }: Props) {
  const isNumber = columns.map((column) => column.endsWith('|'));
  return (
    <div class="scroll" {...scrollingBox(caption)}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            {columns.map((column, at) => (
              <th key={column} scope="col" class={isNumber[at] ? 'number' : undefined}>
                {column.replace('|', '')}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, at) => (
            <tr key={at}>
              {row.map((cell, place) =>
                place === 0 ? (
                  <th scope="row">{cell}</th>
                ) : (
                  <td key={place} class={isNumber[place] ? 'number' : undefined}>
                    {cell}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
