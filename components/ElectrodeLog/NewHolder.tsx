import { Component } from 'preact';
import { drawnFrom } from '../../lib/electrode-log/drawn-from.ts';
import type { Holder } from '../../lib/files/electrode-log.ts';
import TypedBox from '../ClassPlan/TypedBox.tsx';
import { Electrode, nameProblem } from './HolderFacts.tsx';

interface Props {
  holders: readonly Holder[];
  names: readonly string[];
  now: number;
  zone: string;
  by: string;
  onHolder(holder: Holder, said: string): void;
}

interface State {
  holder: Holder;
  /** Place of the holder that it is filled from; none for a shut can or a ready oven. */
  from: string;
  problem: string | undefined;
}

const unnamed: Holder = {
  name: '',
  classification: 'E7018',
  designator: 'none',
  diameter: '1/8 in',
  rows: [],
};

/** A can, a quiver, a drawer of the oven: whatever keeps its electrodes together. */
export default class NewHolder extends Component<Props, State> {
  override state: State = { holder: unnamed, from: '', problem: undefined };

  add = () => {
    const { holders, names, now, zone, by, onHolder } = this.props;
    const { holder, from } = this.state;
    const name = holder.name.trim();
    const source = from === '' ? undefined : holders[Number(from)];
    const taken = nameProblem(name, names);
    const made = taken
      ? { problem: taken }
      : source
        ? drawnFrom(source, name, now, zone, by)
        : { ...holder, name };
    if ('problem' in made) {
      this.setState({ problem: made.problem });
      return;
    }
    this.setState({ holder: { ...holder, name: '' }, from: '', problem: undefined });
    onHolder(made, `${name} is in the log.`);
  };

  override render() {
    const { holders } = this.props;
    const { holder, from, problem } = this.state;
    return (
      <form
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          this.add();
        }}
      >
        <div class="plan-boxes">
          <TypedBox
            id="log-new-name"
            label="Name"
            value={holder.name}
            hint="Can 3, lot 17A, or Quiver booth 4: as it is written on the holder."
            problem={problem}
            onText={(name) => this.setState({ holder: { ...holder, name }, problem: undefined })}
          />
          {holders.length > 0 && (
            <div class="plan-box">
              <label for="log-new-from">Filled from</label>
              <select
                id="log-new-from"
                value={from}
                aria-describedby="log-new-from-hint"
                onChange={(event) => this.setState({ from: event.currentTarget.value })}
              >
                <option value="">a shut can, or nothing logged</option>
                {holders.map(({ name }, place) => (
                  <option key={name} value={String(place)} selected={from === String(place)}>
                    {name}
                  </option>
                ))}
              </select>
              <p class="field-range" id="log-new-from-hint">
                From another holder it takes the clock along, and counts as issued now.
              </p>
            </div>
          )}
          {from === '' && (
            <Electrode
              id="log-new"
              holder={holder}
              onHolder={(next) => this.setState({ holder: next })}
            />
          )}
        </div>
        <p>
          <button type="submit">Put it in the log</button>
        </p>
      </form>
    );
  }
}
