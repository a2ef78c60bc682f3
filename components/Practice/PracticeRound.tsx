import { Component } from 'preact';
import { toleranceText } from '../../lib/practice/asked.ts';
import { makeProblem, type Practiced } from '../../lib/practice/problem.ts';
import { speak } from '../../lib/text/say.ts';
import type { System } from '../../lib/units.ts';
import { currentSystem } from '../Calculator/already-there.ts';
import AskedStep from './AskedStep.tsx';

export interface Props {
  calculations: readonly Practiced[];
  /** The set that the page opens with. */
  set: number;
}

interface State {
  set: number;
  place: number;
  system: System;
}

/** One problem at a time: type the answer, hear which slip fits, see the way, take the next. */
export default class PracticeRound extends Component<Props, State> {
  override state: State = { set: this.props.set, place: 0, system: currentSystem() };

  override componentDidMount() {
    addEventListener('units', this.follow);
    const asked = Number(new URLSearchParams(location.search).get('set'));
    if (Number.isInteger(asked) && asked > 0 && asked < 100000) this.setState({ set: asked });
  }
  override componentWillUnmount() {
    removeEventListener('units', this.follow);
  }
  follow = () => this.setState({ system: currentSystem() });

  /** Into the record on this device; practice goes on where that is closed. */
  async keepResult(calculation: string, solved: boolean) {
    const { set, place } = this.state;
    const [{ keep }, { today }, { withProblem }] = await Promise.all([
      import('../Record/keep.ts'),
      import('../Shelf/today.ts'),
      import('../../lib/record/record-changes.ts'),
    ]);
    keep((record) => withProblem(record, { calculation, set, place, solved, on: today() }));
  }

  override render({ calculations }: Props, { set, place, system }: State) {
    const one = calculations[place % calculations.length] as Practiced;
    const { id, calculation } = one;
    const { text, want, typed, found } = makeProblem(one, set, place, system);
    const key = `${set}-${place}-${system}`;
    return (
      <div class="practice">
        <p class="quiet">
          Set {set}, problem {place + 1}. {calculation.title}
        </p>
        <p>{speak(text, system)}</p>
        <AskedStep
          key={key}
          id={`practice-${key}`}
          asked={{ calculation, typed, results: found.results, want, system }}
          found={found}
          told={0}
          onDone={(solved) => this.keepResult(id, solved)}
        />
        <p class="calculator-actions">
          <button type="button" onClick={() => this.setState({ place: place + 1 })}>
            Next problem
          </button>
          <button type="button" onClick={() => this.setState({ set: set + 1, place: 0 })}>
            Another set
          </button>
        </p>
        <p class="quiet">{toleranceText}</p>
      </div>
    );
  }
}
