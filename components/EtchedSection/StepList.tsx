import {
  isPlaced,
  type MarkName,
  markCounts,
  type Placed,
} from '../../lib/section/section-marks.ts';
import type { Step } from './steps.ts';

/** What is to be marked now, and how many marks of it stand. */
export function StepNow({ step, placed }: { step: Step; placed: Placed }) {
  const { least, most } = markCounts[step.name];
  return (
    <div class="section-now screen-only" aria-live="polite">
      <p>
        <strong>
          Now: {step.title}
          {step.optional && ', if you can see it'}
        </strong>{' '}
        <span class="quiet">
          {placed[step.name].length} of {least}
          {most > least && ' or more'}
        </span>
      </p>
      <p>{step.tell}</p>
    </div>
  );
}

interface Props {
  steps: readonly Step[];
  now: MarkName;
  placed: Placed;
  onStep(step: MarkName): void;
}

/** Everything there is to mark; pressed, it is marked next. */
export default function StepList({ steps, now, placed, onStep }: Props) {
  return (
    <ol class="section-steps">
      {steps.map(({ name, title, optional }) => (
        <li key={name}>
          <button type="button" aria-pressed={name === now} onClick={() => onStep(name)}>
            {isPlaced(placed, name) && <span aria-hidden="true">✓ </span>}
            {title}
            <span class="unseen">
              , {placed[name].length} set{optional && ', may be left out'}
            </span>
          </button>
        </li>
      ))}
    </ol>
  );
}
