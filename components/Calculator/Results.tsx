import type { Answered } from '../../lib/answer.ts';
import type { Calculation, ListOutput, Output } from '../../lib/calculation.ts';
import { speak } from '../../lib/say.ts';
import { nothing, practical, shown, shownCell } from '../../lib/shown.ts';
import type { System } from '../../lib/units.ts';
import Both from '../Units/Both.tsx';

interface Props {
  id: string;
  calculation: Calculation;
  by: { us: Answered; metric: Answered };
  system: System;
  inputs: readonly string[];
}

/** The answers, each in the reader's units; a sentence where there is none. */
export default function Results({ id, calculation, by, system, inputs }: Props) {
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
                <Value output={output} name={name} by={by} />
              </dd>
            </div>
          ))}
      </dl>
    </output>
  );
}

function Value({ output, name, by }: { output: Output; name: string; by: Props['by'] }) {
  if ('list' in output) return <Table output={output} name={name} by={by} />;
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

function Table({ output, name, by }: { output: ListOutput; name: string; by: Props['by'] }) {
  const columns = Object.entries(output.list);
  const rowsOf = (system: System) => {
    const answered = by[system];
    return answered.ok
      ? ((answered.results[name] as Record<string, unknown>[] | undefined) ?? [])
      : [];
  };
  const rows = { us: rowsOf('us'), metric: rowsOf('metric') };
  if (rows.us.length + rows.metric.length === 0) return <>{nothing}</>;
  return (
    <div class="table-box">
      <table>
        <thead>
          <tr>
            {columns.map(([column, { label }]) => (
              <th key={column} scope="col">
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: Math.max(rows.us.length, rows.metric.length) }, (_, index) => (
            <tr key={index}>
              {columns.map(([column, described]) => (
                <td key={column}>
                  <Both
                    us={rows.us[index] ? shownCell(described, rows.us[index]?.[column], 'us') : ''}
                    metric={
                      rows.metric[index]
                        ? shownCell(described, rows.metric[index]?.[column], 'metric')
                        : ''
                    }
                  />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
