/** What is typed on the test-day sheet, and its way into the address and back. */
import type { Inputs, ListInput } from '../calculation.ts';
import { readState, type State, writeState } from '../page-state.ts';
import { type System, unitFor, unitSign } from '../units.ts';

const name = 'sheet';
export type Row = Record<string, string>;

/** What the page opens with: one filler through the whole coupon. */
export const openingState = (system: System): State => ({
  code: 'AWS D1.1',
  test: '3G+4G',
  form: 'plate',
  thickness: system === 'us' ? '3/8 in' : '10 mm',
  deposits: [{ classification: 'E7018', backing: 'with backing', progression: 'uphill' }],
  strap: system === 'us' ? '3/8 in' : '10 mm',
  plunger: system === 'us' ? '1-1/2 in' : '40 mm',
});

/** Bare numbers with the unit they were typed in, so that another reader's units change nothing. */
export function withUnits(inputs: Inputs, state: State, system: System): State {
  return Object.fromEntries(
    Object.entries(state).map(([field, value]) => {
      if (typeof value === 'string') return [field, withUnit(inputs[field], value, system)];
      const { list } = inputs[field] as ListInput;
      return [field, value.map((row) => rowWithUnits(list, row, system))];
    }),
  );
}

const rowWithUnits = (list: ListInput['list'], row: Row, system: System): Row =>
  Object.fromEntries(
    Object.entries(row).map(([column, text]) => [column, withUnit(list[column], text, system)]),
  );

function withUnit(input: Inputs[string] | undefined, text: string, system: System): string {
  if (!input || !/[\d/.,]\s*$/.test(text)) return text;
  const unit =
    'printed' in input
      ? input.printed[system]
      : 'unit' in input && input.unit !== '1'
        ? unitFor(input.unit, system)
        : undefined;
  return unit ? `${text.trim()} ${unitSign(unit)}` : text;
}

/** What is typed as the query of an address, empty fields left out. */
export const sheetQuery = (inputs: Inputs, state: State): string =>
  new URLSearchParams(writeState(name, inputs, filled(state))).toString();

/** What the address holds; undefined where it says nothing of this page. */
export function readSheet(inputs: Inputs, query: string): State | undefined {
  const { state } = readState(name, inputs, new URLSearchParams(query));
  return Object.keys(state).length > 0 ? state : undefined;
}

const filled = (state: State): State =>
  Object.fromEntries(Object.entries(state).filter(([, value]) => value !== ''));
