import { redone, type Undo, undone } from '../../lib/undo.ts';

interface Props<T> {
  undo: Undo<T>;
  /** What came of the last thing that was done. */
  said: string;
  /** What went wrong, a sentence each, without its full stop. */
  trouble: readonly string[];
  onStep(to: Undo<T>, said: string): void;
}

/** One step back and one forward, and below them what is to be said. */
export default function UndoRow<T>({ undo, said, trouble, onStep }: Props<T>) {
  return (
    <>
      <p class="plan-actions">
        <button
          type="button"
          disabled={undo.before.length === 0}
          onClick={() => onStep(undone(undo), 'Undone.')}
        >
          Undo
        </button>
        <button
          type="button"
          disabled={undo.after.length === 0}
          onClick={() => onStep(redone(undo), 'Done again.')}
        >
          Do again
        </button>
        <span role="status">{said}</span>
      </p>
      <div role="alert">
        {trouble.map((text) => (
          <p class="problem" key={text}>
            {text}.
          </p>
        ))}
      </div>
    </>
  );
}
