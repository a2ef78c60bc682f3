import { Component, type ComponentType, createRef } from 'preact';
import { type Answered, answer, type Typed } from '../../lib/answer.ts';
import type { Calculation, Input } from '../../lib/calculation.ts';
import type { System } from '../../lib/units.ts';
import { scrollingBox } from '../Page/scrolling-box.ts';
import type { KeptTexts } from '../QuantityField/Kept.tsx';
import Reasons from '../Reasons/Reasons.tsx';
import AddressNote from './AddressNote.tsx';
import { currentSystem, takeOverTyped } from './already-there.ts';
import CopyLink from './CopyLink.tsx';
import { type Entries, type Entry, typedFor } from './entries.ts';
import Field from './Field.tsx';
import type { FillLines } from './formula-lines.ts';
import type { ListParts } from './list-parts.ts';
import Results from './Results.tsx';

export interface Props {
  /** Prefix of field ids and of the address: the calculation's id, unless a page has two. */
  name: string;
  calculation: Calculation;
  /** What the page gives; the rest opens with the example. */
  given: Typed;
  /** MathML by output and the fields' labels and help, made at build; hydration keeps them. */
  lines?: Record<string, string>;
  texts?: KeptTexts;
  /** The drawing of both answers, where there is one. */
  Drawing?: ComponentType<{ by: Record<System, Answered> }> | undefined;
  /** Present where the calculation is a formula. */
  fill?: FillLines | undefined;
  /** Present where the calculation has lists. */
  lists?: ListParts | undefined;
  /** What a booth's link gives; it takes the place of what the page gives. */
  booth?: Typed | undefined;
}

/** Reading and writing the page’s address, fetched when it is wanted. */
const links = () => import('./address.ts');

interface State {
  entries: Entries;
  system: System;
  strays: readonly string[];
}

/**
 * The form of a calculation. It hydrates with exactly what was rendered at build; what the address
 * holds and what was typed meanwhile is taken over right after. A class, because hooks would weigh
 * more than everything that this form needs of them.
 */
export default class CalculatorForm extends Component<Props, State> {
  override state: State = { entries: {}, system: 'us', strays: [] };
  form = createRef<HTMLFormElement>();
  given = this.props.given;
  by = this.answers({});

  answers(entries: Entries): Record<System, Answered> {
    const { calculation } = this.props;
    const inSystem = (system: System) =>
      answer(calculation, typedFor(calculation.inputs, entries, this.given, system));
    return { us: inSystem('us'), metric: inSystem('metric') };
  }

  override componentDidMount() {
    const { name, calculation } = this.props;
    const system = currentSystem();
    const typed = takeOverTyped(this.form.current, name, calculation.inputs, system);
    this.given = { ...this.given, ...this.props.booth };
    this.take(typed);
    this.follow();
    addEventListener('units', this.follow);
    if (location.search.includes(`${name}.`)) this.readAddress(typed);
  }

  async readAddress(typed: Entries) {
    const { name, calculation } = this.props;
    const { readAddress } = await links();
    const { entries, strays } = readAddress(name, calculation.inputs);
    this.take({ ...entries, ...typed, ...this.state.entries }, strays);
  }

  override componentWillUnmount() {
    removeEventListener('units', this.follow);
  }

  override componentDidUpdate() {
    const { calculation, fill } = this.props;
    if (calculation.kind === 'formula') fill?.(this.form.current, calculation, this.by);
  }

  follow = () => this.setState({ system: currentSystem() });

  take(entries: Entries, strays: readonly string[] = this.state.strays) {
    this.by = this.answers(entries);
    this.setState({ entries, strays });
  }

  keep(entries: Entries, strays?: readonly string[]) {
    this.take(entries, strays);
    const { name, calculation } = this.props;
    links().then(({ writeAddress }) => writeAddress(name, calculation.inputs, entries));
  }

  address = async () => {
    const { name, calculation } = this.props;
    const { addressOf } = await links();
    return addressOf(name, calculation.inputs, this.state.entries);
  };

  change(field: string, entry: Entry) {
    this.keep({ ...this.state.entries, [field]: entry });
  }

  override render() {
    const { name, calculation, lines, texts, Drawing, lists } = this.props;
    const { entries, system, strays } = this.state;
    const { by } = this;
    const inputs: Record<string, Input> = calculation.inputs;
    const current = by[system];
    const problems = current.ok ? [] : current.problems;
    return (
      <form
        class="calculator"
        ref={this.form}
        noValidate
        onSubmit={(event) => event.preventDefault()}
      >
        {Object.entries(inputs).map(([field, input]) => (
          <Field
            key={field}
            id={`${name}-${field}`}
            input={input}
            entry={entries[field]}
            given={this.given[field]}
            system={system}
            problems={problems.filter((problem) => problem.field.split('.')[0] === field)}
            texts={texts?.[field]}
            lists={lists}
            onEntry={(entry) => this.change(field, entry)}
          />
        ))}
        <AddressNote strays={strays} />
        <Results
          id={name}
          calculation={calculation}
          lists={lists}
          by={by}
          system={system}
          inputs={Object.keys(inputs).map((field) => `${name}-${field}`)}
        />
        {calculation.kind === 'formula' && (
          <div class="worked" {...scrollingBox('Formula')} hidden={!current.ok}>
            {Object.keys(calculation.outputs).map((output) => (
              <div
                key={output}
                data-line={output}
                dangerouslySetInnerHTML={{ __html: lines?.[output] ?? '' }}
              />
            ))}
          </div>
        )}
        {Drawing && <Drawing by={by} />}
        <Reasons by={by} />
        <p class="calculator-actions">
          <CopyLink address={this.address} />
          <button type="button" onClick={() => this.keep({}, [])}>
            Back to the example
          </button>
        </p>
      </form>
    );
  }
}
