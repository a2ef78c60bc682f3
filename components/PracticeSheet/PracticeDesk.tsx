import { Component } from 'preact';
import { loadPracticed } from '../../lib/practice/load-practiced.ts';
import type { Practiced } from '../../lib/practice/problem.ts';
import {
  lastSet,
  mostProblems,
  problemSet,
  readSetQuery,
  type SetChoice,
  setQuery,
  wholeNumber,
} from '../../lib/practice/problem-set.ts';
import type { System } from '../../lib/units.ts';
import { currentSystem } from '../Calculator/already-there.ts';
import ChoiceBoxes from './ChoiceBoxes.tsx';
import ProblemSheets from './ProblemSheets.tsx';

export interface PracticeLists {
  lessons: readonly { id: string; title: string; calculations: readonly string[] }[];
  groups: readonly { title: string; items: readonly { id: string; title: string }[] }[];
  opening: SetChoice;
}

interface State {
  choice: SetChoice;
  /** As typed, so that half a number is not taken away. */
  typedSet: string;
  typedCount: string;
  loaded: ReadonlyMap<string, Practiced>;
  system: System;
  said: string;
}

/** Choose, number, count: the address follows, and so do the sheets. */
export default class PracticeDesk extends Component<PracticeLists, State> {
  constructor(props: PracticeLists) {
    super(props);
    const read = readSetQuery(location.search, props.opening);
    const { lessons, calculations } = read;
    const choice = {
      ...read,
      lessons: lessons.filter((id) => props.lessons.some((it) => it.id === id)),
      calculations: calculations.filter((id) => this.known().includes(id)),
    };
    const lost = [...lessons, ...calculations].filter(
      (id) => !choice.lessons.includes(id) && !choice.calculations.includes(id),
    );
    this.state = {
      choice,
      typedSet: String(choice.set),
      typedCount: String(choice.count),
      loaded: new Map(),
      system: currentSystem(),
      said:
        lost.length > 0 ? `Not on this site, and left out: ${lost.join(', ').slice(0, 200)}.` : '',
    };
  }

  override componentDidMount() {
    addEventListener('units', this.follow);
    this.load();
  }
  override componentWillUnmount() {
    removeEventListener('units', this.follow);
  }
  override componentDidUpdate() {
    const query = setQuery(this.state.choice, this.state.system);
    if (location.search !== `?${query}`)
      history.replaceState(history.state, '', `?${query}${location.hash}`);
  }
  follow = () => this.setState({ system: currentSystem() });

  known = (): string[] => this.props.groups.flatMap(({ items }) => items.map(({ id }) => id));

  /** In the order of the site's lists, so that the order of choosing makes no other set. */
  chosenIds(): string[] {
    const { lessons, calculations } = this.state.choice;
    const chosen = new Set([
      ...this.props.lessons
        .filter(({ id }) => lessons.includes(id))
        .flatMap((lesson) => lesson.calculations),
      ...calculations,
    ]);
    return this.known().filter((id) => chosen.has(id));
  }

  async load() {
    const missing = this.chosenIds().filter((id) => !this.state.loaded.has(id));
    try {
      const found = await Promise.all(
        missing.map(async (id) => [id, await loadPracticed(id)] as const),
      );
      this.setState(({ loaded }) => ({ loaded: new Map([...loaded, ...found]) }));
    } catch {
      this.setState({ said: 'A calculation could not be fetched. Reload when you are connected.' });
    }
  }

  change(part: Partial<SetChoice>) {
    this.setState({ choice: { ...this.state.choice, ...part }, said: '' }, () => this.load());
  }
  typeSet = (typedSet: string) => {
    this.setState({ typedSet });
    const set = wholeNumber(typedSet, lastSet);
    if (set) this.change({ set });
  };
  typeCount = (typedCount: string) => {
    this.setState({ typedCount });
    const count = wholeNumber(typedCount, mostProblems);
    if (count) this.change({ count });
  };

  override render({ lessons, groups }: PracticeLists) {
    const { choice, loaded, system, said, typedSet, typedCount } = this.state;
    const ids = this.chosenIds();
    const ready = ids.every((id) => loaded.has(id));
    const calculations = ready ? ids.map((id) => loaded.get(id) as Practiced) : [];
    return (
      <>
        <div class="screen-only">
          <ChoiceBoxes
            title="Lessons"
            groups={[{ title: '', items: lessons }]}
            chosen={choice.lessons}
            onChange={(next) => this.change({ lessons: next })}
          />
          <ChoiceBoxes
            title="Single calculations"
            groups={groups}
            chosen={choice.calculations}
            onChange={(next) => this.change({ calculations: next })}
          />
          <div class="practice-numbers">
            {numberBox('set', 'Set number', typedSet, lastSet, this.typeSet)}
            {numberBox('count', 'Problems', typedCount, mostProblems, this.typeCount)}
          </div>
          <p class="practice-actions">
            <button type="button" onClick={() => printOnly('problem-sheet')}>
              Print the sheet
            </button>
            <button type="button" onClick={() => printOnly('problem-key')}>
              Print the key
            </button>
          </p>
          <p role="status">
            {said ||
              (ids.length === 0
                ? 'Choose a lesson or a calculation.'
                : ready
                  ? `Set ${choice.set}: ${choice.count} problems from ${ids.length} ${ids.length === 1 ? 'calculation' : 'calculations'}. The address holds this choice.`
                  : 'Fetching …')}
          </p>
        </div>
        {calculations.length > 0 && (
          <ProblemSheets
            set={choice.set}
            problems={problemSet(calculations, choice.set, choice.count, system)}
            system={system}
          />
        )}
      </>
    );
  }
}

function numberBox(
  name: string,
  label: string,
  value: string,
  most: number,
  onType: (text: string) => void,
) {
  const wrong = wholeNumber(value, most) === undefined;
  return (
    <div class="field">
      <label for={`practice-${name}`}>{label}</label>
      <input
        id={`practice-${name}`}
        inputMode="numeric"
        autocomplete="off"
        value={value}
        aria-invalid={wrong}
        aria-describedby={`practice-${name}-said`}
        onInput={(event) => onType(event.currentTarget.value)}
      />
      <p id={`practice-${name}-said`} role="status">
        {wrong && `${label} is a whole number from 1 to ${most}.`}
      </p>
    </div>
  );
}

/** Prints one of the two sheets; the browser's own printing takes both. */
function printOnly(id: string): void {
  const { dataset } = document.documentElement;
  dataset.only = id;
  print();
  delete dataset.only;
}
