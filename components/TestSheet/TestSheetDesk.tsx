import { Component } from 'preact';
import type { Inputs, ListInput } from '../../lib/calculation.ts';
import type { State as Typed } from '../../lib/page-state.ts';
import { type SheetRules, sheetInputs } from '../../lib/test-sheet/sheet-rules.ts';
import {
  openingState,
  type Row,
  readSheet,
  sheetQuery,
  withUnits,
} from '../../lib/test-sheet/sheet-state.ts';
import { testSheet } from '../../lib/test-sheet/test-sheet.ts';
import type { System } from '../../lib/units.ts';
import { fitSheets, fitSheetsSoon } from '../Booth/fit-sheets.ts';
import { currentSystem } from '../Calculator/already-there.ts';
import CodesSheet from './CodesSheet.tsx';
import RecordSheet from './RecordSheet.tsx';
import SheetField from './SheetField.tsx';

interface State {
  typed: Typed;
  system: System;
}

/** More fillers than any joint has. */
const mostRows = 8;
const pipeOnly = new Set(['edition', 'nps', 'schedule', 'outsideDiameter']);

/** Choose the test, read what it covers, print both sheets. */
export default class TestSheetDesk extends Component<{ rules: SheetRules }, State> {
  private inputs: Inputs = sheetInputs(this.props.rules);
  override state: State = {
    typed: readSheet(this.inputs, location.search) ?? openingState(currentSystem()),
    system: currentSystem(),
  };

  override componentDidMount() {
    addEventListener('units', this.follow);
    addEventListener('beforeprint', fitSheets);
    fitSheetsSoon();
  }

  override componentWillUnmount() {
    removeEventListener('units', this.follow);
    removeEventListener('beforeprint', fitSheets);
  }

  override componentDidUpdate() {
    fitSheetsSoon();
  }

  /** What was typed without a unit keeps the one that it was typed in. */
  follow = () =>
    this.setState(({ typed, system }) => ({
      typed: withUnits(this.inputs, typed, system),
      system: currentSystem(),
    }));

  change(part: Typed) {
    const typed = { ...this.state.typed, ...part };
    this.setState({ typed });
    const query = sheetQuery(this.inputs, withUnits(this.inputs, typed, this.state.system));
    try {
      history.replaceState(history.state, '', `?${query}`);
    } catch {
      // Some browsers limit how often; the next key writes it.
    }
  }

  rows(): Row[] {
    const { deposits } = this.state.typed;
    return Array.isArray(deposits) && deposits.length > 0 ? deposits : [{}];
  }

  override render() {
    const { typed, system } = this.state;
    const sheet = testSheet(this.props.rules, typed, system);
    const pipe = typed.form === 'pipe';
    return (
      <>
        <form
          class="booth-desk screen-only"
          noValidate
          onSubmit={(event) => event.preventDefault()}
        >
          <div class="booth-numbers">
            {Object.entries(this.inputs)
              .filter(([field, input]) => !('list' in input) && (pipe || !pipeOnly.has(field)))
              .map(([field, input]) => (
                <SheetField
                  key={field}
                  id={`sheet-${field}`}
                  input={input}
                  value={typeof typed[field] === 'string' ? (typed[field] as string) : ''}
                  problem={sheet.problems[field]}
                  warning={sheet.warnings[field]}
                  system={system}
                  onText={(text) => this.change({ [field]: text })}
                />
              ))}
          </div>
          {pipe && (
            <p class="quiet">
              With size and schedule chosen, leave thickness and diameter empty to take them from
              the table; what you measured comes first.
            </p>
          )}
          {this.deposits(sheet.problems)}
        </form>
        <p class="booth-actions screen-only">
          <button type="button" onClick={() => print()}>
            Print both sheets
          </button>
        </p>
        <h2 class="screen-only">The two sheets</h2>
        <div class="booth-sheets">
          <CodesSheet sheet={sheet} />
          <RecordSheet sheet={sheet} />
        </div>
      </>
    );
  }

  private deposits(problems: Readonly<Record<string, string>>) {
    const rows = this.rows();
    const { list } = this.inputs.deposits as ListInput;
    const set = (all: Row[]) => this.change({ deposits: all });
    return (
      <>
        <h2>Deposits</h2>
        <p class="quiet">
          One filler for the whole coupon: leave its thickness empty. More than one: a thickness for
          each, root first.
        </p>
        {rows.map((row, place) => (
          <fieldset key={place}>
            <legend>
              <h3>Deposit {place + 1}</h3>
            </legend>
            <div class="booth-numbers">
              {Object.entries(list).map(([column, input]) => (
                <SheetField
                  key={column}
                  id={`sheet-deposit-${place + 1}-${column}`}
                  input={input}
                  value={row[column] ?? ''}
                  problem={problems[`deposits.${place + 1}.${column}`]}
                  system={this.state.system}
                  onText={(text) =>
                    set(rows.map((one, at) => (at === place ? { ...one, [column]: text } : one)))
                  }
                />
              ))}
            </div>
            {rows.length > 1 && (
              <button type="button" onClick={() => set(rows.filter((_, at) => at !== place))}>
                Take out deposit {place + 1}
              </button>
            )}
          </fieldset>
        ))}
        <p>
          <button
            type="button"
            disabled={rows.length >= mostRows}
            onClick={() => set([...rows, { ...rows.at(-1), thickness: '', layers: '' }])}
          >
            Add a deposit
          </button>
        </p>
      </>
    );
  }
}
