/**
 * Lists as programs and letters write them, as rows by name: JSON text, one row alone, rows without
 * names in the order of the columns, `8 in x 32; 6 in x 16`, `0,0; 8,0`, `none`.
 */

type Cell = unknown;
type Row = Readonly<Record<string, Cell>>;

/** Rows, or what was typed where it is no list that can be told apart. */
export function asRows(columns: readonly string[], typed: unknown): unknown {
  const given = typeof typed === 'string' ? fromText(columns, typed) : typed;
  if (isRow(given)) return [given];
  if (!Array.isArray(given)) return given;
  const onlyCells = given.length > 0 && given.every(isCell);
  if (!onlyCells) return given.map((row) => (Array.isArray(row) ? named(columns, row) : row));
  // A list of lengths: one piece of each. Anything else without rows is one row.
  return columns[1] === 'count' ? given.map(piece) : [named(columns, given)];
}

function fromText(columns: readonly string[], text: string): unknown {
  const trimmed = text.trim();
  if (/^none$/i.test(trimmed)) return [];
  if (/^[[{]/.test(trimmed)) {
    try {
      return JSON.parse(trimmed);
    } catch {
      return text;
    }
  }
  const rows = trimmed.split(/\s*[;\n]\s*/).filter((row) => row !== '');
  if (rows.length === 0) return text;
  if (columns[1] === 'count') {
    const pieces = rows.flatMap((row) => row.split(/\s*,\s*/));
    if (pieces.every((one) => times.test(one) || withUnit.test(one))) return pieces.map(piece);
  }
  return rows.every((row) => row.includes(',')) ? rows.map((row) => row.split(/\s*,\s*/)) : text;
}

const withUnit = /^[\d./\s-]*\d\s*(?:in|ft|mm|m|["”'])$/i;
const times = /^(.+?)\s*[x×*]\s*(.+)$/i;
const bareCount = /^\d+$/;

/** `8 in x 32` and `32 x 8 in`: the side with a unit is the length. A length alone is one piece. */
function piece(cell: Cell): Row {
  const [, left = '', right = ''] = times.exec(String(cell)) ?? [];
  if (right === '') return { length: cell, count: 1 };
  return bareCount.test(left) && !bareCount.test(right)
    ? { length: right, count: left }
    : { length: left, count: right };
}

const named = (columns: readonly string[], cells: readonly Cell[]): Row =>
  Object.fromEntries(cells.map((cell, index) => [columns[index] ?? String(index + 1), cell]));

const isCell = (value: unknown): boolean => typeof value === 'string' || typeof value === 'number';
const isRow = (value: unknown): value is Row =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
