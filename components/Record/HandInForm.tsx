import { Component } from 'preact';
import type { Coupon } from '../../lib/files/learner-record.ts';
import { readDay } from '../../lib/text/day-text.ts';

interface Props {
  exercises: readonly { id: string; title: string; points: readonly string[] }[];
  today: string;
  onAdd(coupon: Coupon): void;
}
interface State {
  exercise: string;
  on: string;
  result: Coupon['result'];
  grader: string;
  readings: string;
  missed: readonly string[];
  said: string;
}

/** One coupon, as it was handed in or came back graded. */
export default class HandInForm extends Component<Props, State> {
  override state: State = {
    exercise: this.props.exercises[0]?.id ?? '',
    on: this.props.today,
    result: 'waiting',
    grader: '',
    readings: '',
    missed: [],
    said: '',
  };

  add = (event: Event) => {
    event.preventDefault();
    const { exercise, on, result, grader, readings, missed } = this.state;
    const read = readDay(on);
    if ('problem' in read) return this.setState({ said: `Day ${read.problem}.` });
    if (result !== 'waiting' && grader.trim() === '')
      return this.setState({ said: 'Graded by needs initials: only a graded coupon counts.' });
    const lines = readings.split('\n').filter((line) => line.trim() !== '');
    this.props.onAdd({
      exercise,
      on: read.day,
      result,
      grader: result === 'waiting' ? '' : grader.trim().slice(0, 200),
      readings: lines.map((line) => {
        const [item = '', ...rest] = line.split(':');
        return { item: item.trim().slice(0, 200), reading: rest.join(':').trim().slice(0, 200) };
      }),
      note: '',
      ...(result === 'repeat' && missed.length > 0 && { missed: [...missed] }),
    });
    this.setState({ readings: '', missed: [], said: 'Put in your record.' });
  };

  override render({ exercises }: Props, { exercise, on, result, grader, readings, said }: State) {
    const described = { 'aria-describedby': 'hand-in-said' };
    return (
      <form class="screen-only" noValidate onSubmit={this.add}>
        <h2>Put in a coupon</h2>
        <div class="field">
          <label for="hand-in-exercise">Exercise</label>
          <select
            id="hand-in-exercise"
            value={exercise}
            onChange={(event) => this.setState({ exercise: event.currentTarget.value, missed: [] })}
          >
            {exercises.map(({ id, title }) => (
              <option key={id} value={id}>
                {title}
              </option>
            ))}
          </select>
        </div>
        <div class="field">
          <label for="hand-in-day">Day</label>
          <input
            id="hand-in-day"
            {...described}
            autocomplete="off"
            value={on}
            onInput={(event) => this.setState({ on: event.currentTarget.value })}
          />
        </div>
        <div class="field">
          <label for="hand-in-result">Result</label>
          <select
            id="hand-in-result"
            value={result}
            onChange={(event) =>
              this.setState({ result: event.currentTarget.value as Coupon['result'] })
            }
          >
            <option value="waiting">waits for a grade</option>
            <option value="passed">passed</option>
            <option value="repeat">to be repeated</option>
          </select>
        </div>
        <div class="field">
          <label for="hand-in-grader">Graded by</label>
          <input
            id="hand-in-grader"
            {...described}
            autocomplete="off"
            value={grader}
            onInput={(event) => this.setState({ grader: event.currentTarget.value })}
          />
        </div>
        {this.state.result === 'repeat' && this.notMet()}
        <div class="field">
          <label for="hand-in-readings">Readings, one a line, as “leg: 5/16 in”</label>
          <textarea
            id="hand-in-readings"
            rows={3}
            value={readings}
            onInput={(event) => this.setState({ readings: event.currentTarget.value })}
          />
        </div>
        <p>
          <button type="submit">Put it in</button>
        </p>
        <p id="hand-in-said" role="status">
          {said}
        </p>
      </form>
    );
  }

  notMet() {
    const { exercise, missed } = this.state;
    const points = this.props.exercises.find(({ id }) => id === exercise)?.points ?? [];
    const toggle = (point: string) =>
      this.setState({
        missed: missed.includes(point) ? missed.filter((it) => it !== point) : [...missed, point],
      });
    return (
      <fieldset class="record-points">
        <legend>Not met</legend>
        {points.map((point) => (
          <label key={point}>
            <input
              type="checkbox"
              checked={missed.includes(point)}
              onChange={() => toggle(point)}
            />
            <span>{point}</span>
          </label>
        ))}
      </fieldset>
    );
  }
}
