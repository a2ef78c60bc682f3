import { Component } from 'preact';
import type { Holder } from '../../lib/files/electrode-log.ts';
import { designators } from '../../lib/inputs/classification.ts';
import { type Classification, classifications } from '../../lib/tables/classifications.ts';
import TypedBox from '../ClassPlan/TypedBox.tsx';

interface Props {
  id: string;
  holder: Holder;
  taken: readonly string[];
  onHolder(holder: Holder): void;
}

/** What is written on a holder: its name, and what is printed on its electrodes. */
export default class HolderFacts extends Component<Props, { name: string | undefined }> {
  override state: { name: string | undefined } = { name: undefined };

  /** What Undo brings back is shown, and no half-typed name hides it. */
  override componentDidUpdate(before: Props) {
    const { name } = this.props.holder;
    if (before.holder.name !== name && this.state.name?.trim() !== name)
      this.setState({ name: undefined });
  }

  override render() {
    const { id, holder, taken, onHolder } = this.props;
    const name = this.state.name ?? holder.name;
    return (
      <div class="plan-boxes">
        <TypedBox
          id={`${id}-name`}
          label="Name"
          value={name}
          problem={nameProblem(name, taken)}
          onText={(text) => {
            this.setState({ name: text });
            if (!nameProblem(text, taken)) onHolder({ ...holder, name: text.trim() });
          }}
        />
        <Electrode id={id} holder={holder} onHolder={onHolder} />
      </div>
    );
  }
}

interface ElectrodeProps {
  id: string;
  holder: Holder;
  onHolder(holder: Holder): void;
}

/** Classification, designator and diameter. */
export function Electrode({ id, holder, onHolder }: ElectrodeProps) {
  const picker = <T extends string>(
    field: 'classification' | 'designator',
    label: string,
    choices: readonly T[],
  ) => (
    <div class="plan-box">
      <label for={`${id}-${field}`}>{label}</label>
      <select
        id={`${id}-${field}`}
        value={holder[field]}
        onChange={(event) => onHolder({ ...holder, [field]: event.currentTarget.value })}
      >
        {choices.map((choice) => (
          <option key={choice} value={choice} selected={choice === holder[field]}>
            {choice}
          </option>
        ))}
      </select>
    </div>
  );
  return (
    <>
      {picker<Classification>('classification', 'Classification', classifications)}
      {picker('designator', 'Printed after it', designators)}
      <TypedBox
        id={`${id}-diameter`}
        label="Diameter"
        value={holder.diameter}
        hint="As printed; may stay empty."
        onText={(text) => onHolder({ ...holder, diameter: text.slice(0, 40) })}
      />
    </>
  );
}

/** Why a holder cannot have that name. */
export function nameProblem(text: string, taken: readonly string[]): string | undefined {
  const name = text.trim();
  if (name === '') return 'Name is empty; write what stands on the holder';
  if (name.length > 60) return 'Name has room for 60 letters';
  if (taken.includes(name)) return `Name ${name} is taken; each holder has its own`;
  return undefined;
}
