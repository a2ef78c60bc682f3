import { Component } from 'preact';
import type { SheetPoint } from '../../lib/booth/exercise-sheet.ts';
import { ownLimitSaid } from '../../lib/grading/limit-bound.ts';
import { limitSense } from '../../lib/grading/limit-sense.ts';
import { type PointRubric, type Rubric, rubricOf } from '../../lib/grading/rubric.ts';
import { currentSystem } from '../Calculator/already-there.ts';
import Said from '../Reasons/Said.tsx';

interface Props {
  points: readonly SheetPoint[];
  rubric: Rubric;
  onPassMark(passMark: number): void;
  onPoint(item: string, part: Partial<PointRubric>): void;
}

/** What was typed where a number was asked for and none can be read, by field. */
interface State {
  typed: Readonly<Record<string, string>>;
}

/** Weights, what must pass, and limits of the shop that are tighter than those of the exercise. */
export default class RubricForm extends Component<Props, State> {
  override state: State = { typed: {} };

  /** Takes over a number inside its bounds; anything else stays in its box with a sentence. */
  number(field: string, text: string, most: number, take: (value: number) => void) {
    const value = Number(text.trim().replace(',', '.'));
    const good = text.trim() !== '' && Number.isFinite(value) && value >= 0 && value <= most;
    const { [field]: _, ...typed } = this.state.typed;
    this.setState({ typed: good ? typed : { ...typed, [field]: text } });
    if (good) take(value);
  }

  override render() {
    const { points, rubric, onPassMark, onPoint } = this.props;
    const { typed } = this.state;
    const problem = (field: string, name: string, most: number) =>
      typed[field] !== undefined &&
      `${name} must be a number from 0 to ${most}; the last good one counts`;
    return (
      <details class="screen-only grading-rubric">
        <summary>Rubric: weights, and limits tighter than the exercise’s</summary>
        <p class="quiet">
          A point of weight 0 is judged and not counted. A limit of your own may be tighter than the
          one of the source. One that is looser is said beside every verdict, on paper and in
          tables.
        </p>
        <div class="field">
          <label for="grading-pass-mark">Pass mark, percent of the total</label>
          <input
            id="grading-pass-mark"
            type="text"
            inputMode="decimal"
            value={typed['pass-mark'] ?? String(rubric.passMark)}
            aria-invalid={typed['pass-mark'] !== undefined}
            aria-describedby="grading-pass-mark-problem"
            onInput={(event) =>
              this.number('pass-mark', event.currentTarget.value, 100, onPassMark)
            }
          />
          <p class="problem" id="grading-pass-mark-problem">
            {problem('pass-mark', 'Pass mark', 100)}
          </p>
        </div>
        <ul class="columns grading-points">
          {points.map((point, place) => {
            const { item } = point;
            const { weight, must, limit } = rubricOf(rubric, item);
            const id = `grading-rubric-${place}`;
            const said = ownLimitSaid(point, limit, currentSystem());
            return (
              <li key={item}>
                <p>
                  <b class="grading-item">{item}</b> <Said text={point.limit} />
                </p>
                <div class="field">
                  <label for={`${id}-weight`}>Weight</label>
                  <input
                    id={`${id}-weight`}
                    type="text"
                    inputMode="decimal"
                    value={typed[id] ?? String(weight)}
                    aria-invalid={typed[id] !== undefined}
                    aria-describedby={`${id}-problem`}
                    onInput={(event) =>
                      this.number(id, event.currentTarget.value, 1000, (value) =>
                        onPoint(item, { weight: value }),
                      )
                    }
                  />
                  <label class="grading-must">
                    <input
                      type="checkbox"
                      checked={must}
                      onChange={(event) => onPoint(item, { must: event.currentTarget.checked })}
                    />{' '}
                    must pass
                  </label>
                  <p class="problem" id={`${id}-problem`}>
                    {problem(id, 'Weight', 1000)}
                  </p>
                </div>
                {limitSense(point) && (
                  <div class="field">
                    <label for={`${id}-limit`}>Own limit</label>
                    <input
                      id={`${id}-limit`}
                      type="text"
                      autocomplete="off"
                      maxLength={40}
                      value={limit}
                      aria-describedby={`${id}-said`}
                      onInput={(event) => onPoint(item, { limit: event.currentTarget.value })}
                    />
                    <p class="problem" id={`${id}-said`}>
                      {said && <Said text={said} />}
                    </p>
                  </div>
                )}
              </li>
            );
          })}
        </ul>
      </details>
    );
  }
}
