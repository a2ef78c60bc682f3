import type { Answered } from '../../lib/answer.ts';
import type { ListOutput } from '../../lib/calculation.ts';
import { nothing, shownCell } from '../../lib/text/shown.ts';
import type { System } from '../../lib/units.ts';
import { scrollingBox } from '../Page/scrolling-box.ts';
import Both from '../Units/Both.tsx';

/** A result that is a list: one row each. */
export default function ResultTable({
  output,
  name,
  by,
}: {
  output: ListOutput;
  name: string;
  by: { us: Answered; metric: Answered };
}) {
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
    <div class="scroll" {...scrollingBox('Table')}>
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
