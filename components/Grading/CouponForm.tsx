import type { ExerciseSheet, SheetPoint } from '../../lib/booth/exercise-sheet.ts';
import type { GradedCoupon } from '../../lib/files/grading-book.ts';
import type { PointVerdict, Verdict } from '../../lib/grading/grade.ts';
import { byEye } from '../../lib/grading/rubric.ts';
import Said from '../Reasons/Said.tsx';

interface Props {
  sheet: ExerciseSheet;
  coupon: GradedCoupon;
  verdict: Verdict;
  onChange(part: Partial<GradedCoupon>): void;
  onRemove(): void;
  onSaveTable(): void;
  onSaveRecord(): void;
}

const facts = [
  ['learner', 'Learner, by number or initials'],
  ['attempt', 'Attempt'],
  ['on', 'Date'],
  ['grader', 'Graded by, initials'],
] as const;

/** The coupon in hand: who, what was read at each point, and what that means. */
export default function CouponForm(props: Props) {
  const { sheet, coupon, verdict, onChange } = props;
  return (
    <form class="screen-only" noValidate onSubmit={(event) => event.preventDefault()}>
      <h3>{coupon.learner ? `Coupon of ${coupon.learner}` : 'Coupon'}</h3>
      <div class="grading-facts">
        {facts.map(([name, label]) => (
          <div key={name} class="field">
            <label for={`grading-${name}`}>{label}</label>
            <input
              id={`grading-${name}`}
              type="text"
              autocomplete="off"
              maxLength={60}
              value={coupon[name]}
              onInput={(event) => onChange({ [name]: event.currentTarget.value })}
            />
          </div>
        ))}
      </div>
      <p class="quiet">
        Several readings of one point are parted by semicolons; the worst counts. A bare number
        stands in your units.
      </p>
      <ul class="columns grading-points">
        {sheet.points.map((point, place) => (
          <PointRow
            key={point.item}
            id={`grading-point-${place}`}
            point={point}
            reading={coupon.readings[point.item] ?? ''}
            verdict={verdict.points[place] as PointVerdict}
            onReading={(text) => onChange({ readings: { ...coupon.readings, [point.item]: text } })}
          />
        ))}
      </ul>
      <p class="grading-result" role="status">
        <b>
          {verdict.result === 'waiting'
            ? 'Waiting'
            : verdict.result === 'passed'
              ? 'Passed'
              : 'Repeat'}
        </b>
        {verdict.total !== undefined && `, ${Math.round(verdict.total)} %`}. {verdict.reason}.
      </p>
      <div class="field">
        <label for="grading-note">Note</label>
        <input
          id="grading-note"
          type="text"
          maxLength={2000}
          value={coupon.note}
          onInput={(event) => onChange({ note: event.currentTarget.value })}
        />
      </div>
      <p class="grading-actions">
        <button type="button" disabled={coupon.learner === ''} onClick={props.onSaveTable}>
          Save this learner as CSV
        </button>
        <button type="button" disabled={coupon.learner === ''} onClick={props.onSaveRecord}>
          Save for the learner’s record
        </button>
        <button type="button" onClick={props.onRemove}>
          Take this coupon out
        </button>
      </p>
    </form>
  );
}

interface PointProps {
  id: string;
  point: SheetPoint;
  reading: string;
  verdict: PointVerdict;
  onReading(text: string): void;
}

function PointRow({ id, point, reading, verdict, onReading }: PointProps) {
  const known = reading === '' || reading === byEye.yes || reading === byEye.no;
  return (
    <li>
      <p>
        <label for={id}>
          <b class="grading-item">{point.item}</b> <Said text={point.limit} />
        </label>
        <small>{point.source ?? 'common practice'}</small>
      </p>
      <div class="field">
        {verdict.sense ? (
          <input
            id={id}
            type="text"
            autocomplete="off"
            maxLength={200}
            value={reading}
            aria-invalid={verdict.result === 'unread'}
            aria-describedby={`${id}-verdict`}
            onInput={(event) => onReading(event.currentTarget.value)}
          />
        ) : (
          <select
            id={id}
            value={reading}
            aria-describedby={`${id}-verdict`}
            onChange={(event) => onReading(event.currentTarget.value)}
          >
            <option value="">not looked at</option>
            <option value={byEye.yes}>pass</option>
            <option value={byEye.no}>repeat</option>
            {!known && <option value={reading}>{reading.slice(0, 40)}</option>}
          </select>
        )}
      </div>
      <p id={`${id}-verdict`} class={verdict.result === 'unread' ? 'problem' : undefined}>
        {verdict.result === 'passed' && '✓ '}
        {verdict.result === 'missed' && '✕ '}
        {verdict.result !== 'open' && <Said text={verdict.reason} />}
        {verdict.looser && (
          <strong>
            . <Said text={verdict.looser} />
          </strong>
        )}
      </p>
    </li>
  );
}
