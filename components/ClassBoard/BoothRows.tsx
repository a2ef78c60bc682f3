import type { BoardBooth } from '../../lib/files/class-board.ts';
import { sizeText } from '../ClassPlan/Size.tsx';

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
