/**
 * Tables as text that spreadsheets open: RFC 4180, with the byte order mark that makes them read
 * UTF-8. A text cell that a spreadsheet would take for a formula gets an apostrophe before it, which
 * is taken off again on reading.
 */
import { csvFormatRow, dsvFormat } from 'd3-dsv';

export type Cell = string | number | undefined;

const formulaLike = /^[=+\-@\t\r]/;
const guarded = /^'(?=[=+\-@\t\r])/;

/** Rows under a row of column names. Numbers are written in full, missing cells stay empty. */
export function writeCsv(columns: readonly string[], rows: readonly (readonly Cell[])[]): string {
  const cell = (value: Cell): string => {
    if (value === undefined) return '';
    if (typeof value === 'number') return String(value);
    return formulaLike.test(value) ? `'${value}` : value;
  };
  const lines = [[...columns], ...rows.map((row) => row.map(cell))].map((row) => csvFormatRow(row));
  return `\uFEFF${lines.join('\r\n')}\r\n`;
}

type Row<C extends string, O extends string> = Record<C, string> & Partial<Record<O, string>>;
export type CsvRead<Row> = { ok: true; rows: Row[] } | { ok: false; problem: string };

/**
 * Rows by column name. Column names are compared without case; columns that are not asked for are
 * left out; `optional` ones may be missing. Reads commas, semicolons and tabs, whichever the first line holds most of.
 */
export function readCsv<C extends string, O extends string = never>(
  text: string,
  columns: readonly C[],
  optional: readonly O[] = [],
): CsvRead<Row<C, O>> {
  const bare = text.replace(/^\uFEFF/, '');
  const [head = ''] = bare.split(/\r?\n/, 1);
  const mark = [',', ';', '\t'].reduce((best, it) =>
    head.split(it).length > head.split(best).length ? it : best,
  );
  const [names = [], ...rows] = dsvFormat(mark).parseRows(bare);
  const place = (column: string) =>
    names.findIndex((name) => name.trim().toLowerCase() === column.toLowerCase());
  const missing = columns.filter((column) => place(column) < 0);
  if (missing.length > 0)
    return {
      ok: false,
      problem: `This table has no column "${missing.join('", "')}"; its first line must name ${columns.join(', ')}`,
    };
  const wanted = [...columns, ...optional.filter((column) => place(column) >= 0)];
  return {
    ok: true,
    rows: rows
      .filter((row) => row.some((cell) => cell.trim() !== ''))
      .map(
        (row) =>
          Object.fromEntries(
            wanted.map((column) => [
              column,
              (row[place(column)] ?? '').trim().replace(guarded, ''),
            ]),
          ) as Row<C, O>,
      ),
  };
}
