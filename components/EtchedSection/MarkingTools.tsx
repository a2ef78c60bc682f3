import type { MarkName, Placed } from '../../lib/section/section-marks.ts';
import { redone, type Undo, undone } from '../../lib/undo.ts';
import type { MarkId } from './MarkHandles.tsx';

interface Props {
  marks: Undo<Placed>;
  picked: MarkId | undefined;
  moving: boolean;
  /** The steps before and after this one. */
  back: MarkName | undefined;
  next: MarkName | undefined;
  /** Whether the picture is shown squared up; undefined where no corners say how. */
  squaring: boolean | undefined;
  onSquaring(): void;
  onStep(step: MarkName | undefined): void;
  onUndo(way: typeof undone): void;
  onRemove(mark: MarkId): void;
  onMoving(): void;
  onZoom(factor: number): void;
  onFit(): void;
}

const zoomStep = 1.5;

/** The buttons under the picture: from step to step, back and forward in time, nearer and farther. */
export default function MarkingTools(props: Props) {
  const { marks, picked, moving, back, next, squaring } = props;
  return (
    <div class="section-tools" role="group" aria-label="Marking">
      <button type="button" disabled={!back} onClick={() => props.onStep(back)}>
        Back
      </button>
      <button type="button" disabled={!next} onClick={() => props.onStep(next)}>
        Next
      </button>
      <button
        type="button"
        disabled={marks.before.length === 0}
        onClick={() => props.onUndo(undone)}
      >
        Undo
      </button>
      <button
        type="button"
        disabled={marks.after.length === 0}
        onClick={() => props.onUndo(redone)}
      >
        Do again
      </button>
      <button type="button" disabled={!picked} onClick={() => picked && props.onRemove(picked)}>
        Take mark away
      </button>
      <button type="button" onClick={() => props.onZoom(zoomStep)}>
        <span aria-hidden="true">+</span>
        <span class="unseen">Closer</span>
      </button>
      <button type="button" onClick={() => props.onZoom(1 / zoomStep)}>
        <span aria-hidden="true">−</span>
        <span class="unseen">Farther</span>
      </button>
      <button type="button" onClick={props.onFit}>
        All of it
      </button>
      <button type="button" aria-pressed={moving} onClick={props.onMoving}>
        Move picture
      </button>
      {squaring !== undefined && (
        <button type="button" aria-pressed={squaring} onClick={props.onSquaring}>
          Squared up
        </button>
      )}
    </div>
  );
}
