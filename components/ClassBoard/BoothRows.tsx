import { Component } from 'preact';
import { type BoardBooth, machineCurrents, machineSettings } from '../../lib/files/class-board.ts';
import { sizeText } from '../ClassPlan/Size.tsx';
import TypedBox from '../ClassPlan/TypedBox.tsx';

interface Props {
  booths: readonly BoardBooth[];
  onBooth(place: number, booth: BoardBooth | undefined): void;
  onAdd(): void;
}

const sizes = [3 / 32, 1 / 8, 5 / 32, 3 / 16];

/** Booths and what their machines can burn all evening. */
export default function BoothRows({ booths, onBooth, onAdd }: Props) {
  return (
    <>
      <ul class="board-list board-booths">
        {booths.map((booth, at) => (
          <li key={at}>
            <label>
              Booth{' '}
              <input
                type="text"
                value={booth.booth}
                onChange={(event) =>
                  onBooth(at, { ...booth, booth: event.currentTarget.value.trim() || booth.booth })
                }
              />
            </label>
            <label>
              Machine{' '}
              <input
                type="text"
                value={booth.machine}
                onInput={(event) => onBooth(at, { ...booth, machine: event.currentTarget.value })}
              />
            </label>
            <label>
              Up to{' '}
              <select
                value={String(booth.largest)}
                onChange={(event) =>
                  onBooth(at, { ...booth, largest: Number(event.currentTarget.value) })
                }
              >
                {[...new Set([...sizes, booth.largest])].map((size) => (
                  <option key={size} value={String(size)} selected={size === booth.largest}>
                    {sizeText(size, 'in', 'us')} · {sizeText(size, 'in', 'metric', 2)}
                  </option>
                ))}
              </select>
            </label>
            <AmpsBox
              id={`booth-${at}-most`}
              label="Most"
              booth={booth.booth}
              value={booth.most}
              onAmps={(most) => onBooth(at, fielded(booth, 'most', most))}
            />
            <Picked
              label="Gives"
              value={booth.current}
              words={machineCurrents}
              onWord={(current) => onBooth(at, fielded(booth, 'current', current))}
            />
            <Picked
              label="Set by"
              value={booth.setBy}
              words={machineSettings}
              onWord={(setBy) => onBooth(at, fielded(booth, 'setBy', setBy))}
            />
            <AmpsBox
              id={`booth-${at}-offset`}
              label="Meter less dial"
              booth={booth.booth}
              value={booth.offset}
              onAmps={(offset) => onBooth(at, fielded(booth, 'offset', offset))}
            />
            <label>
              <input
                type="checkbox"
                checked={booth.down}
                onChange={(event) => onBooth(at, { ...booth, down: event.currentTarget.checked })}
              />{' '}
              down
            </label>
            <button
              type="button"
              aria-label={`Take out booth ${booth.booth}`}
              onClick={() => onBooth(at, undefined)}
            >
              ✕
            </button>
          </li>
        ))}
      </ul>
      <p>
        <button type="button" onClick={onAdd}>
          Add a booth
        </button>
      </p>
    </>
  );
}

/** An unknown value is no field at all. */
function fielded<K extends 'most' | 'current' | 'setBy' | 'offset'>(
  booth: BoardBooth,
  name: K,
  value: BoardBooth[K] | undefined,
): BoardBooth {
  const next = { ...booth };
  if (value === undefined) delete next[name];
  else next[name] = value;
  return next;
}

interface AmpsProps {
  id: string;
  label: string;
  booth: string;
  value: number | undefined;
  onAmps(amps: number | undefined): void;
}

/** Amperes or nothing; a text that is no number stays in its box, is told, and is not taken over. */
class AmpsBox extends Component<AmpsProps, { typed?: string }> {
  override render() {
    const { id, label, booth, value, onAmps } = this.props;
    const text = this.state.typed ?? (value === undefined ? '' : String(value));
    return (
      <TypedBox
        id={id}
        label={label}
        of={`of booth ${booth}`}
        unit="A"
        value={text}
        problem={
          ampsOf(text) === null ? `${label} needs a number of amperes, at most 500` : undefined
        }
        onText={(typed) => {
          this.setState({ typed });
          const amps = ampsOf(typed);
          if (amps !== null) onAmps(amps);
        }}
      />
    );
  }
}

/** Null: no number of amperes. */
function ampsOf(text: string): number | undefined | null {
  const plain = text.trim().replace(',', '.').replace('−', '-').replace(/\s*A$/i, '');
  if (plain === '') return undefined;
  const amps = Number(plain);
  return Math.abs(amps) <= 500 ? amps : null;
}

function Picked<W extends string>({
  label,
  value,
  words,
  onWord,
}: {
  label: string;
  value: W | undefined;
  words: readonly W[];
  onWord(word: W | undefined): void;
}) {
  return (
    <label>
      {label}{' '}
      <select
        value={value ?? ''}
        onChange={(event) => onWord((event.currentTarget.value || undefined) as W | undefined)}
      >
        <option value="">not known</option>
        {words.map((word) => (
          <option key={word} value={word} selected={word === value}>
            {word}
          </option>
        ))}
      </select>
    </label>
  );
}
