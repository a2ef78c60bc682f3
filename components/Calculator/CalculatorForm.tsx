import { Component, type ComponentType, createRef } from 'preact';
import { type Answered, answer, type Typed } from '../../lib/answer.ts';
import type { Calculation, Input } from '../../lib/calculation.ts';
import type { System } from '../../lib/units.ts';
import DrawnBoth, { type DrawingProps } from '../Drawing/DrawnBoth.tsx';
import { scrollingBox } from '../Page/scrolling-box.ts';
import type { KeptTexts } from '../QuantityField/Kept.tsx';
import Reasons from '../Reasons/Reasons.tsx';
import AddressNote from './AddressNote.tsx';
import { addressOf, readAddress, writeAddress } from './address.ts';
import { currentSystem, fillLines, takeOverTyped } from './already-there.ts';
import CopyLink from './CopyLink.tsx';
import { type Entries, type Entry, typedFor } from './entries.ts';
import Field from './Field.tsx';
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
  Drawing?: ComponentType<DrawingProps> | undefined;
  /** Present where the calculation has lists. */
  lists?: ListParts | undefined;
}

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
  by = this.answers({});

  answers(entries: Entries): Record<System, Answered> {
    const { calculation, given } = this.props;
    const inSystem = (system: System) =>
      answer(calculation, typedFor(calculation.inputs, entries, given, system));
    return { us: inSystem('us'), metric: inSystem('metric') };
  }

  override componentDidMount() {
    const { name, calculation } = this.props;
    const system = currentSystem();
    const typed = takeOverTyped(this.form.current, name, calculation.inputs, system);
    const { entries, strays } = readAddress(name, calculation.inputs);
    this.take({ ...entries, ...typed }, strays);
    this.follow();
    addEventListener('units', this.follow);
  }

  override componentWillUnmount() {
    removeEventListener('units', this.follow);
  }

  override componentDidUpdate() {
    fillLines(this.form.current, this.props.calculation, this.by);
  }

  follow = () => this.setState({ system: currentSystem() });

  take(entries: Entries, strays: readonly string[] = this.state.strays) {
    this.by = this.answers(entries);
    this.setState({ entries, strays });
  }

  keep(entries: Entries, strays?: readonly string[]) {
    this.take(entries, strays);
    writeAddress(this.props.name, this.props.calculation.inputs, entries);
  }

  change(field: string, entry: Entry) {
    this.keep({ ...this.state.entries, [field]: entry });
  }

  override render() {
    const { name, calculation, given, lines, texts, Drawing, lists } = this.props;
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
            given={given[field]}
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
        {Drawing && <DrawnBoth Drawing={Drawing} by={by} />}
        <Reasons by={by} />
        <p class="calculator-actions">
          <CopyLink address={() => addressOf(name, calculation.inputs, entries)} />
          <button type="button" onClick={() => this.keep({}, [])}>
            Back to the example
          </button>
        </p>
      </form>
    );
  }
}
