import {
  type ReadWhen,
  readWhen,
  type TypedWhen,
  typedWhen,
} from '../../lib/electrode-log/read-when.ts';
import { wallTime } from '../../lib/electrode-log/wall-time.ts';
import { whenWords } from '../../lib/electrode-log/when-text.ts';
import WhenBoxes from './WhenBoxes.tsx';

interface Props {
  now: number;
  zone: string;
  /** As typed; undefined while the page follows the clock. */
  chosen: TypedWhen | undefined;
  onChosen(chosen: TypedWhen | undefined): void;
}

/** For which moment the states are told: now, or a time that somebody asks about. */
export default function MomentForm({ now, zone, chosen, onChosen }: Props) {
  const read: ReadWhen | undefined = chosen && readWhen(chosen, zone);
  return (
    <>
      <p class="plan-actions">
        <button type="button" aria-pressed={!chosen} onClick={() => onChosen(undefined)}>
          Now, {whenWords(now, zone, wallTime(now, zone).day)}
        </button>
        <button
          type="button"
          aria-pressed={chosen !== undefined}
          onClick={() => onChosen(chosen ?? typedWhen(now, zone))}
        >
          At another time
        </button>
      </p>
      {chosen && (
        <div class="plan-boxes">
          <p class="quiet log-wide">
            A time gone by or still to come. The buttons of tonight come back with Now.
          </p>
          <WhenBoxes
            id="log-moment"
            value={chosen}
            twice={read?.twice}
            problem={read?.ok === false ? { field: read.field, text: read.problem } : undefined}
            onWhen={onChosen}
          />
        </div>
      )}
    </>
  );
}
