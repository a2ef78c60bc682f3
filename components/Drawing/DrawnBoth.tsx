import type { ComponentType } from 'preact';
import type { Answer, Answered } from '../../lib/answer.ts';

export interface DrawingProps {
  /** Inputs as numbers in their declared units, words and rows as they are. */
  given: Record<string, unknown>;
  results: Record<string, unknown>;
}

interface Props {
  Drawing: ComponentType<DrawingProps>;
  by: { us: Answered; metric: Answered };
}

/** One drawing for both systems; two where the opening examples differ by system. */
export default function DrawnBoth({ Drawing, by: { us, metric } }: Props) {
  const drawn = ({ values, results }: Answer) => <Drawing given={values} results={results} />;
  if (!us.ok || !metric.ok) return null;
  if (alike(us.values, metric.values)) return <figure class="drawing">{drawn(us)}</figure>;
  return (
    <>
      <figure class="drawing us">{drawn(us)}</figure>
      <figure class="drawing metric">{drawn(metric)}</figure>
    </>
  );
}

function alike(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= 1e-9 * Math.abs(a);
  if (typeof a !== 'object' || a === null || typeof b !== 'object' || b === null) return a === b;
  const names = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...names].every((name) => alike((a as never)[name], (b as never)[name]));
}

/** A drawing as the form takes it: of both answers. */
export const ofBoth =
  (Drawing: ComponentType<DrawingProps>): ComponentType<Pick<Props, 'by'>> =>
  ({ by }) => <DrawnBoth Drawing={Drawing} by={by} />;
