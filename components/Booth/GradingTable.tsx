import { shownBoothNumber } from '../../lib/booth/booth-number.ts';
import type { SheetPoint } from '../../lib/booth/exercise-sheet.ts';
import { knownMarks } from '../Known/known-marks.ts';
import Said from '../Reasons/Said.tsx';
import Both from '../Units/Both.tsx';

/** What a coupon is judged by, with room for what was read. */
export default function GradingTable({
  points,
  leg,
}: {
  points: readonly SheetPoint[];
  /** The size this booth welds, where its link sets one. */
  leg?: string | undefined;
}) {
  return (
    <table class="booth-grading">
      <caption>Grading</caption>
      <thead>
        <tr>
          <th scope="col">Point and limit</th>
          <th scope="col">Reading</th>
          <th scope="col">Pass</th>
          <th scope="col">Repeat</th>
        </tr>
      </thead>
      <tbody>
        {points.map(({ item, limit, source, known }) => (
          <tr key={item}>
            <th scope="row">
              {item}{' '}
              <span>
                <Said text={limit} />
                {leg && item === 'size' && (
                  <b>
                    ; at this booth <Both {...shownBoothNumber('leg', leg)} />
                  </b>
                )}
              </span>{' '}
              <small>
                {source ? `${source} (${knownMarks[known].short})` : knownMarks[known].short}
              </small>
            </th>
            <td />
            <td>☐</td>
            <td>☐</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
