import { Component } from 'preact';
import type { ClassExercise } from '../../lib/class/class-exercise.ts';
import { type TurnField, turnFields } from '../../lib/class/settings.ts';
import type { ClassPlan } from '../../lib/files/class-plan.ts';
import TypedBox from './TypedBox.tsx';

interface Props {
  exercises: readonly ClassExercise[];
  plan: ClassPlan;
  problems: ReadonlyMap<string, string>;
  /** By number of the week, what is too much in it. */
  overfull: ReadonlyMap<number, string>;
  onPick(slug: string, picked: boolean): void;
  onField(slug: string, field: TurnField, text: string): void;
}

/** Every exercise of the course, in reading order; those in the plan open their boxes. */
export default function ExerciseRows(props: Props) {
  const { exercises, plan, problems, overfull, onPick, onField } = props;
  const rows = new Map(plan.exercises.map((row) => [row.exercise, row]));
  return (
    <ul class="plan-exercises">
      {exercises.map((exercise) => (
        <Row
          key={exercise.slug}
          exercise={exercise}
          row={rows.get(exercise.slug)}
          learners={plan.settings.learners}
          repeats={plan.settings.repeats}
          told={Object.keys(turnFields)
            .map((field) => problems.get(`${exercise.slug}.${field}`) ?? '')
            .join('|')}
          over={overfull.get(Number(rows.get(exercise.slug)?.week || 0)) ?? ''}
          onPick={onPick}
          onField={onField}
        />
      ))}
    </ul>
  );
}

interface RowProps {
  exercise: ClassExercise;
  row: ClassPlan['exercises'][number] | undefined;
  learners: string;
  repeats: string;
  /** Problems of its fields, in their order. */
  told: string;
  /** Said by the box of its week. */
  over: string;
  onPick: Props['onPick'];
  onField: Props['onField'];
}

class Row extends Component<RowProps> {
  /** A key pressed in one row draws that row alone. */
  override shouldComponentUpdate(next: RowProps) {
    const now = this.props;
    return (
      next.row !== now.row ||
      next.told !== now.told ||
      next.over !== now.over ||
      next.learners !== now.learners ||
      next.repeats !== now.repeats
    );
  }

  override render() {
    const { exercise, row, learners, repeats, told, over, onPick, onField } = this.props;
    const { slug, title, lesson, attempts, minutes, station } = exercise;
    const standard: Record<TurnField, string> = {
      attempts: String(attempts),
      learners: learners || '16',
      minutes: String(minutes),
      repeats: repeats || '50',
      week: 'next',
    };
    const problems = told.split('|');
    return (
      <li>
        <label class="plan-pick">
          <input
            type="checkbox"
            checked={row !== undefined}
            onChange={(event) => onPick(slug, event.currentTarget.checked)}
          />
          <span>
            {title}{' '}
            <small>
              lesson {lesson}
              {station === 'side' && ', beside the booths'}
            </small>
          </span>
        </label>
        {row && (
          <div class="plan-boxes plan-turn">
            {(Object.keys(turnFields) as TurnField[]).map((field, at) => (
              <TypedBox
                key={field}
                id={`plan-${slug}-${field}`}
                label={field === 'repeats' ? 'Repeats, %' : turnFields[field].label}
                of={`of ${title}`}
                value={row[field]}
                placeholder={standard[field]}
                problem={problems[at] || undefined}
                hint={field === 'week' ? over : ''}
                onText={(text) => onField(slug, field, text)}
              />
            ))}
          </div>
        )}
      </li>
    );
  }
}
