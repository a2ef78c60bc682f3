import type { Input } from '../../lib/calculation.ts';
import { to } from '../Page/to.ts';
import Said from '../Reasons/Said.tsx';
import { rangeText } from './range-text.ts';

/** Under a box: which values are answered, and how a reader gets one. Drawn at build only. */
export default function FieldHelp({ id, input }: { id: string; input: Input }) {
  const range =
    'limits' in input ? rangeText(input) : 'date' in input ? 'year-month-day, 2026-03-02' : '';
  return (
    <>
      {range !== '' && (
        <p class="field-range" id={`${id}-range`}>
          <Said text={range} />
        </p>
      )}
      <details class="obtain">
        <summary>How to get it</summary>
        <p>
          <Said text={input.obtain} />{' '}
          {input.estimateBy && <a href={to(`/calculators/${input.estimateBy}/`)}>Work it out</a>}
        </p>
      </details>
    </>
  );
}
