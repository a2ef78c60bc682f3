import type { ExerciseSheet } from '../../lib/booth/exercise-sheet.ts';
import type { GradedCoupon } from '../../lib/files/grading-book.ts';
import type { Verdict } from '../../lib/grading/grade.ts';
import { scrollingBox } from '../Page/scrolling-box.ts';
import Said from '../Reasons/Said.tsx';

interface Props {
  sheet: ExerciseSheet;
  coupons: readonly GradedCoupon[];
  verdicts: readonly Verdict[];
  at: number;
  onChoose(place: number): void;
}

const words = { waiting: 'waiting', passed: 'passed', repeat: 'repeat' } as const;
const marks = { passed: '✓', missed: '✕', open: '–', unread: '?' } as const;

/** All coupons of the exercise; on paper each with its points. */
export default function GradedList({ sheet, coupons, verdicts, at, onChoose }: Props) {
  if (coupons.length === 0)
    return <p>No coupon yet. Add one for each learner and attempt, or open a CSV.</p>;
  return (
    <>
      <div class="scroll" {...scrollingBox('Coupons')}>
        <table>
          <thead>
            <tr>
              {['Learner', 'Attempt', 'Date', 'Total', 'Result', 'Why'].map((name) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {coupons.map(({ learner, attempt, on }, place) => (
              <tr key={place} aria-current={place === at ? 'true' : undefined}>
                <th scope="row">
                  <button
                    type="button"
                    aria-pressed={place === at}
                    onClick={() => onChoose(place)}
                    class="screen-only"
                  >
                    {learner || 'no number'}
                  </button>
                  <span class="print-only">{learner || '____'}</span>
                </th>
                <td>{attempt}</td>
                <td>{on}</td>
                <td>{percent(verdicts[place]?.total)}</td>
                <td>{words[verdicts[place]?.result ?? 'waiting']}</td>
                <td>{verdicts[place]?.reason}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <div class="print-only">
        {coupons.map((coupon, place) => (
          <section key={place} class="keep">
            <h3>
              Learner {coupon.learner || '____'}, attempt {coupon.attempt || '__'}, {coupon.on}
            </h3>
            <ul class="grading-print">
              {verdicts[place]?.points.map(({ item, result, reason, looser }) => (
                <li key={item}>
                  {marks[result]} <b>{item}</b> {coupon.readings[item]}: <Said text={reason} />
                  {looser && (
                    <strong>
                      . <Said text={looser} />
                    </strong>
                  )}
                </li>
              ))}
            </ul>
            <p>
              <b>
                {words[verdicts[place]?.result ?? 'waiting']}, {percent(verdicts[place]?.total)}
              </b>
              . {verdicts[place]?.reason}. {coupon.note} Graded by {coupon.grader || '________'} for{' '}
              {sheet.title}.
            </p>
          </section>
        ))}
      </div>
    </>
  );
}

const percent = (total: number | undefined): string =>
  total === undefined ? '–' : `${Math.round(total)} %`;
