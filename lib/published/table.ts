/** Tables that the site hands out as files. */
import { type Cell, writeCsv } from '../csv.ts';

/** A table that the site hands out as a file: what it holds, and what each column holds. */
export interface PublishedTable {
  /** File name without its ending. */
  name: string;
  holds: string;
  columns: readonly { name: string; holds: string }[];
  rows: readonly (readonly Cell[])[];
}

export interface Column<Row> {
  name: string;
  holds: string;
  cell(row: Row): Cell;
}

/** Builds a table from rows of any shape. */
export const publishedTable = <Row>(
  name: string,
  holds: string,
  rows: readonly Row[],
  columns: readonly Column<Row>[],
): PublishedTable => ({
  name,
  holds,
  columns: columns.map((column) => ({ name: column.name, holds: column.holds })),
  rows: rows.map((row) => columns.map(({ cell }) => cell(row))),
});

/** The table as RFC 4180 text, column names first. */
export const tableAsCsv = ({ columns, rows }: PublishedTable): string =>
  writeCsv(
    columns.map(({ name }) => name),
    rows,
  );

/** Several values in one cell; none of ours holds a semicolon. */
export const several = (values: readonly (string | number)[]): string => values.join('; ');
