/**
 * What a reader typed, in the address of the page: `?heat-input.current=128+A`. The part before the
 * point is the calculator's name on the page. Only what was typed is there, sorted, so that equal
 * states have equal addresses. A list has one parameter a row, its cells parted by `|`.
 */
import type { Input, Inputs, ListInput } from './calculation.ts';

export type State = Record<string, string | Record<string, string>[]>;

const longest = 200;

/** The parameters under `name`, each with its value; a field that is no input is left out. */
export function writeState(name: string, inputs: Inputs, state: State): [string, string][] {
  return Object.entries(state)
    .filter(([field]) => Object.hasOwn(inputs, field))
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([field, value]) => {
      const input = inputs[field] as Input;
      const key = `${name}.${field}`;
      if (typeof value === 'string') return [[key, value] as [string, string]];
      return value.map((row) => [key, writeRow(input as ListInput, row)] as [string, string]);
    });
}

const writeRow = ({ list }: ListInput, row: Record<string, string>): string =>
  Object.keys(list)
    .map((column) => (row[column] ?? '').replaceAll('|', '/'))
    .join('|')
    .replace(/\|+$/, '');

/** The state under `name`, and the parameters under it that mean nothing here. */
export function readState(
  name: string,
  inputs: Inputs,
  parameters: URLSearchParams,
): { state: State; strays: string[] } {
  const state: State = {};
  const strays: string[] = [];
  const prefix = `${name}.`;
  for (const [key, value] of parameters) {
    if (!key.startsWith(prefix)) continue;
    const field = key.slice(prefix.length);
    const input = Object.hasOwn(inputs, field) ? (inputs[field] as Input) : undefined;
    if (!input || value.length > longest) {
      strays.push(key);
      continue;
    }
    if (!('list' in input)) {
      if (field in state) strays.push(key);
      else state[field] = value;
      continue;
    }
    const row = readRow(input, value);
    if (row) state[field] = [...((state[field] as Record<string, string>[]) ?? []), row];
    else strays.push(key);
  }
  return { state, strays };
}

function readRow({ list }: ListInput, text: string): Record<string, string> | undefined {
  const cells = text.split('|');
  const columns = Object.keys(list);
  if (cells.length > columns.length) return undefined;
  return Object.fromEntries(
    columns.flatMap((column, index) => (cells[index] ? [[column, cells[index]]] : [])),
  );
}
