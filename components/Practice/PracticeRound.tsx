import { Component } from 'preact';
import type { Calculation } from '../../lib/calculation.ts';
import { makeProblem, type Problem } from '../../lib/problem.ts';
import { readQuantity } from '../../lib/quantity-text.ts';
import { speak } from '../../lib/say.ts';
import { shown } from '../../lib/shown.ts';
import { judge, tolerance } from '../../lib/slips.ts';
import { convert, type System, unitFor, unitOf, unitSign } from '../../lib/units.ts';
import { currentSystem } from '../Calculator/already-there.ts';

export interface Props {
  calculations: readonly { id: string; calculation: Calculation }[];
  /** The set that the page opens with. */
  set: number;
}

interface State {
  set: number;
  place: number;
  system: System;
  text: string;
  said: string;
  solved: boolean;
}

/** One problem at a time: type the answer, hear which slip fits, see the way, take the next. */
export default class PracticeRound extends Component<Props, State> {
  override state: State = {
    set: this.props.set,
    place: 0,
    system: 'us',
    text: '',
    said: '',
    solved: false,
  };

  override componentDidMount() {
    this.follow();
    addEventListener('units', this.follow);
    const asked = Number(new URLSearchParams(location.search).get('set'));
    if (Number.isInteger(asked) && asked > 0 && asked < 100000)
      this.fresh({ set: asked, place: 0 });
  }
  override componentWillUnmount() {
    removeEventListener('units', this.follow);
  }
  follow = () => this.fresh({ system: currentSystem() });

  fresh(change: Partial<State>) {
    this.setState({ text: '', said: '', solved: false, ...change });
  }

  problem(): { problem: Problem; calculation: Calculation; id: string } {
    const { set, place, system } = this.state;
    const { calculations } = this.props;
    const { id, calculation } = calculations[
      place % calculations.length
    ] as Props['calculations'][number];
    return { problem: makeProblem(id, calculation, set, place, system), calculation, id };
  }

  check = (event: Event) => {
    event.preventDefault();
    const { problem } = this.problem();
    const { said, solved } = verdict(problem, this.state.text, this.state.system);
    this.setState({ said, solved });
  };

  override render() {
    const { set, place, system, text, said, solved } = this.state;
    const { problem, calculation, id } = this.problem();
    const { output, want, found } = problem;
    const unit =
      'unit' in output
        ? unitSign(unitFor(output.unit, system))
        : 'printed' in output
          ? unitSign(output.printed[system])
          : '';
    const words =
      'words' in output && !('unit' in output) && !('printed' in output) ? output.words : undefined;
    const box = `practice-${id}`;
    return (
      <form class="practice" noValidate onSubmit={this.check}>
        <p class="quiet">
          Set {set}, problem {place + 1}. {calculation.title}
        </p>
        <p>{speak(problem.text, system)}</p>
        <div class="field">
          <label for={box}>Your answer{unit === '' ? '' : ` (${unit})`}</label>
          {words ? (
            <select
              id={box}
              value={text}
              onChange={(event) => this.setState({ text: event.currentTarget.value })}
            >
              <option value="">choose</option>
              {words.map((word) => (
                <option key={word} value={word}>
                  {word}
                </option>
              ))}
            </select>
          ) : (
            <input
              id={box}
              type="text"
              autocomplete="off"
              value={text}
              aria-describedby={`${box}-said`}
              onInput={(event) => this.setState({ text: event.currentTarget.value })}
            />
          )}
          <p id={`${box}-said`} class={solved ? 'well' : 'hint'} role="status">
            {said}
          </p>
        </div>
        <p class="calculator-actions">
          <button type="submit">Check</button>
          <button type="button" onClick={() => this.fresh({ place: place + 1 })}>
            Next problem
          </button>
          <button type="button" onClick={() => this.fresh({ set: set + 1, place: 0 })}>
            Another set
          </button>
        </p>
        <details key={`${set}-${place}-${system}`}>
          <summary>Show the way</summary>
          {calculation.kind === 'formula' && (
            <p>
              <code>{(calculation.outputs[want] as { formula: string }).formula}</code>
            </p>
          )}
          <ul>
            {found.because.map((reason) => (
              <li key={reason.text}>{speak(reason.text, system)}</li>
            ))}
          </ul>
          <p>
            <strong>{shown(output, found.results[want], system)}</strong>
          </p>
        </details>
        <p class="quiet">
          An answer within {tolerance * 100} in a hundred counts as right. Fractions and units are
          welcome.
        </p>
      </form>
    );
  }
}

function verdict(
  { output, want, found }: Problem,
  text: string,
  system: System,
): { said: string; solved: boolean } {
  const result = found.results[want];
  if (text.trim() === '') return { said: 'Type your answer first.', solved: false };
  if (typeof result === 'string') {
    const right = text.trim().toLowerCase() === result.toLowerCase();
    return {
      said: right ? 'Right.' : 'Not this one. Look at the rows and limits under “Show the way”.',
      solved: right,
    };
  }
  const unit =
    'unit' in output
      ? unitFor(output.unit, system)
      : 'printed' in output
        ? output.printed[system]
        : '1';
  const computed =
    'printed' in output
      ? (result as Record<System, number>)[system]
      : convert(result as number, 'unit' in output ? output.unit : '1', unit);
  const reading = readQuantity(text, unit);
  if ('problem' in reading) return { said: `Your answer ${reading.problem}.`, solved: false };
  const value =
    unitOf(reading.unit).kind === unitOf(unit).kind
      ? convert(reading.value, reading.unit, unit)
      : reading.value;
  if (computed === 0)
    return value === 0
      ? { said: 'Right.', solved: true }
      : { said: 'It is nothing at all here.', solved: false };
  const judged = judge(value, computed);
  return judged.right
    ? { said: `Right: ${shown(output, result, system)}.`, solved: true }
    : { said: judged.text, solved: false };
}
