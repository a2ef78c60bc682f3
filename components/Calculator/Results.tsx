import type { Answered } from '../../lib/answer.ts';
import type { Calculation, Output } from '../../lib/calculation.ts';
import { speak } from '../../lib/text/say.ts';
import { nothing, practical, shown } from '../../lib/text/shown.ts';
import type { System } from '../../lib/units.ts';
import Both from '../Units/Both.tsx';
import type { ListParts } from './list-parts.ts';

interface Props {
  id: string;
  calculation: Calculation;
  by: { us: Answered; metric: Answered };
  system: System;
  inputs: readonly string[];
  lists: ListParts | undefined;
}

/** The answers, each in the reader's units; a sentence where there is none. */
export default function Results({ id, calculation, by, system, inputs, lists }: Props) {
  const current = by[system];
  const general = current.ok ? [] : current.problems.filter(({ field }) => field === '');
  return (
    <output class="results" id={`${id}-results`} for={inputs.join(' ')}>
      {general.map(({ text }) => (
        <p class="problem" key={text}>
          {speak(text, system)}.
        </p>
      ))}
      <dl>
        {Object.entries<Output>(calculation.outputs)
          .filter(([, output]) => !('shape' in output))
          .map(([name, output]) => (
            <div key={name} class={'list' in output ? 'result result-list' : 'result'}>
              <dt>{output.label}</dt>
              <dd>
                <Value output={output} name={name} by={by} lists={lists} />
              </dd>
            </div>
          ))}
      </dl>
    </output>
  );
}

interface ValueProps extends Pick<Props, 'by' | 'lists'> {
  output: Output;
  name: string;
}

function Value({ output, name, by, lists }: ValueProps) {
  if ('list' in output)
    return lists ? <lists.ResultTable output={output} name={name} by={by} /> : null;
  const text = (system: System) => {
    const answered = by[system];
    return answered.ok ? shown(output, answered.results[name], system) : nothing;
  };
  const size = (system: System) => {
    const answered = by[system];
    const found = answered.ok ? practical(output, answered.results[name], system) : undefined;
    return found === undefined ? '' : ` → ${found}`;
  };
  return (
    <>
      <Both us={text('us')} metric={text('metric')} />
      <small>
        <Both us={size('us')} metric={size('metric')} />
      </small>
    </>
  );
}
