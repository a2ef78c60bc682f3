import { Component } from 'preact';
import type { LearnerRecord } from '../../lib/files/learner-record.ts';
import { toleranceText } from '../../lib/practice/asked.ts';
import { loadPracticed } from '../../lib/practice/load-practiced.ts';
import { makeProblem, type Practiced } from '../../lib/practice/problem.ts';
import { type Due, setOfDay } from '../../lib/practice/review.ts';
import { speak } from '../../lib/text/say.ts';
import type { System } from '../../lib/units.ts';
import AskedStep from '../Practice/AskedStep.tsx';

interface Props {
  round: readonly Due[];
  today: string;
  system: System;
  onSolved(problem: LearnerRecord['problems'][number]): void;
  onEnd(): void;
}
interface State {
  at: number;
  loaded: ReadonlyMap<string, Practiced> | undefined;
  said: string;
}

/** The problems of a day, one at a time, from different lessons in turn. */
export default class ReviewRound extends Component<Props, State> {
  override state: State = { at: 0, loaded: undefined, said: 'Fetching …' };

  override async componentDidMount() {
    try {
      const found = await Promise.all(
        this.props.round.map(async ({ calculation: id }) => [id, await loadPracticed(id)] as const),
      );
      this.setState({ loaded: new Map(found), said: '' });
    } catch {
      this.setState({ said: 'A problem could not be fetched. Reload when you are connected.' });
    }
  }

  override render({ round, today, system, onSolved, onEnd }: Props, { at, loaded, said }: State) {
    const due = round[at];
    const one = due && loaded?.get(due.calculation);
    if (!due || !one) return <p role="status">{said}</p>;
    const set = setOfDay(today);
    const { calculation } = one;
    const { text, want, typed, found } = makeProblem(one, set, at, system);
    const last = at === round.length - 1;
    return (
      <div class="practice">
        <p class="quiet">
          {at + 1} of {round.length}. {calculation.title}
        </p>
        <p>{speak(text, system)}</p>
        <AskedStep
          key={`${at}-${system}`}
          id={`review-${at}-${system}`}
          asked={{ calculation, typed, results: found.results, want, system }}
          found={found}
          told={0}
          onDone={(solved) =>
            onSolved({ calculation: due.calculation, set, place: at, solved, on: today })
          }
        />
        <p class="record-actions">
          <button type="button" onClick={() => (last ? onEnd() : this.setState({ at: at + 1 }))}>
            {last ? 'End the round' : 'Next problem'}
          </button>
        </p>
        <p class="quiet">{toleranceText}</p>
      </div>
    );
  }
}
