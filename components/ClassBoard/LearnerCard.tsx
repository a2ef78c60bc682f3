import { Component } from 'preact';
import type { BoardExercise } from '../../lib/class/standing.ts';
import type { BoardLearner } from '../../lib/files/class-board.ts';
import type { Coupon } from '../../lib/files/learner-record.ts';
import { readDay } from '../../lib/text/day-text.ts';
import TypedBox from '../ClassPlan/TypedBox.tsx';

interface Props {
  /** Its place on the board, for the ids of its boxes. */
  place: number;
  learner: BoardLearner;
  exercises: readonly BoardExercise[];
  today: string;
  /** Undefined takes the learner off the board. */
  onLearner(learner: BoardLearner | undefined): void;
}

const results: Readonly<Record<Coupon['result'], string>> = {
  waiting: 'waits for a grade',
  passed: 'passed',
  repeat: 'to be repeated',
};

/** What is typed and cannot be taken over yet stands here, with the reason. */
interface State {
  open: boolean;
  typed: Record<string, string>;
  asking: boolean;
}

/** One learner: where he is, what he handed in, when he was away. */
export default class LearnerCard extends Component<Props, State> {
  override state: State = { open: false, typed: {}, asking: false };

  put = (part: Partial<BoardLearner>) => this.props.onLearner({ ...this.props.learner, ...part });

  type = (box: string, text: string) =>
    this.setState({ typed: { ...this.state.typed, [box]: text } });

  /** A day box: an empty one clears the day, a wrong one keeps the old. */
  dayBox(field: 'gate' | 'tested' | 'lastWelded', label: string, hint: string) {
    const { learner, place } = this.props;
    const text = this.state.typed[field] ?? learner[field] ?? '';
    const read = text.trim() === '' ? { day: '' } : readDay(text);
    return (
      <TypedBox
        id={`board-${place}-${field}`}
        label={label}
        of={`of ${learner.learner}`}
        value={text}
        hint={hint}
        problem={'problem' in read ? `${label} ${read.problem}` : undefined}
        onText={(next) => {
          this.type(field, next);
          const day = next.trim() === '' ? { day: '' } : readDay(next);
          if ('day' in day) this.put({ [field]: day.day });
        }}
      />
    );
  }

  /** A box for minutes; what is no number is told and not taken over. */
  minutesBox() {
    const { learner, place } = this.props;
    const text = this.state.typed.caughtUp ?? String(learner.caughtUp);
    const bad = minutesOf(text) === undefined;
    return (
      <TypedBox
        id={`board-${place}-caughtUp`}
        label="Minutes caught up"
        of={`by ${learner.learner}`}
        value={text}
        problem={bad ? 'Minutes caught up needs a number from 0 to 100000' : undefined}
        onText={(next) => {
          this.type('caughtUp', next);
          const minutes = minutesOf(next);
          if (minutes !== undefined) this.put({ caughtUp: minutes });
        }}
      />
    );
  }

  addAbsence = () => {
    const { learner, today } = this.props;
    const { typed } = this.state;
    const on = readDay(typed.away || today);
    const minutes = minutesOf(typed.awayMinutes ?? '165');
    if ('problem' in on || minutes === undefined) return;
    this.put({ absences: [...learner.absences, { on: on.day, minutes }] });
    this.setState({ typed: { ...typed, away: '' } });
  };

  addCoupon = () => {
    const { learner, exercises, today } = this.props;
    const { typed } = this.state;
    const exercise = typed.coupon || learner.at || exercises[0]?.slug || '';
    const coupon: Coupon = {
      exercise,
      on: today,
      result: 'waiting',
      readings: [],
      grader: '',
      note: '',
    };
    this.put({ coupons: [...learner.coupons, coupon] });
  };

  remove = () => {
    if (this.state.asking) this.props.onLearner(undefined);
    else this.setState({ asking: true });
  };

  override render() {
    const { learner, exercises, today, place } = this.props;
    const { open, typed, asking } = this.state;
    const name = learner.learner;
    const awayDay = typed.away || today;
    const away = readDay(awayDay);
    const awayMinutes = typed.awayMinutes ?? '165';
    return (
      <li>
        <div class="board-line">
          <label class="plan-pick">
            <input
              type="checkbox"
              checked={learner.here}
              onChange={(event) => this.put({ here: event.currentTarget.checked })}
            />
            <span>
              <b>{name}</b> is here
            </span>
          </label>
          <button
            type="button"
            aria-expanded={open}
            onClick={() => this.setState({ open: !open, asking: false })}
          >
            {open ? 'Close' : 'Write down'}
            <span class="unseen"> about {name}</span>
          </button>
        </div>
        {open && (
          <div class="board-card">
            <div class="plan-boxes">
              {this.picker(
                'at',
                'Exercise',
                learner.at,
                (at) => this.put({ at }),
                'the first not passed',
              )}
              {this.minutesBox()}
              {this.dayBox(
                'gate',
                'Safety gate signed',
                'Day on which both signed. Nobody strikes before it.',
              )}
              {this.dayBox('tested', 'Day of the test', 'Where a test was passed: 2026-03-02.')}
              {this.dayBox(
                'lastWelded',
                'Last weld seen',
                'Another weld that somebody saw and signed.',
              )}
            </div>
            <h4>Coupons</h4>
            <ul class="board-list">
              {learner.coupons.map((coupon, at) => (
                <li key={`${coupon.exercise} ${coupon.on} ${at}`}>
                  <label>
                    {exercises.find(({ slug }) => slug === coupon.exercise)?.title ??
                      coupon.exercise}
                    , {coupon.on}{' '}
                    <select
                      value={coupon.result}
                      onChange={(event) => {
                        const result = event.currentTarget.value as Coupon['result'];
                        this.put({
                          coupons: learner.coupons.map((it, index) =>
                            index === at ? { ...it, result } : it,
                          ),
                        });
                      }}
                    >
                      {Object.entries(results).map(([value, text]) => (
                        <option key={value} value={value} selected={value === coupon.result}>
                          {text}
                        </option>
                      ))}
                    </select>
                  </label>
                  <button
                    type="button"
                    aria-label={`Take out the coupon of ${coupon.on}`}
                    onClick={() =>
                      this.put({ coupons: learner.coupons.filter((_, index) => index !== at) })
                    }
                  >
                    ✕
                  </button>
                </li>
              ))}
            </ul>
            <div class="board-add">
              {this.picker(
                'coupon',
                'Handed in today',
                typed.coupon || learner.at || exercises[0]?.slug || '',
                (slug) => this.type('coupon', slug),
              )}
              <button type="button" onClick={this.addCoupon}>
                Add the coupon
              </button>
            </div>
            <h4>Away</h4>
            <ul class="board-list">
              {learner.absences.map(({ on, minutes }, at) => (
                <li key={`${on} ${at}`}>
                  <span>
                    {on}, {minutes} min
                  </span>
                  <button
                    type="button"
                    aria-label={`Take out the absence of ${on}`}
                    onClick={() =>
                      this.put({ absences: learner.absences.filter((_, index) => index !== at) })
                    }
                  >
                    ✕
                  </button>
                </li>
              ))}
            </ul>
            <div class="board-add">
              <TypedBox
                id={`board-${place}-away`}
                label="Away on"
                of={`of ${name}`}
                value={awayDay}
                problem={'problem' in away ? `Away on ${away.problem}` : undefined}
                onText={(text) => this.type('away', text)}
              />
              <TypedBox
                id={`board-${place}-awayMinutes`}
                label="Minutes missed"
                of={`of ${name}`}
                value={awayMinutes}
                problem={
                  minutesOf(awayMinutes) === undefined
                    ? 'Minutes missed needs a number from 0 to 100000'
                    : undefined
                }
                onText={(text) => this.type('awayMinutes', text)}
              />
              <button type="button" onClick={this.addAbsence}>
                Add the absence
              </button>
            </div>
            <p>
              <button type="button" onClick={this.remove}>
                {asking ? `Yes, take ${name} off` : `Take ${name} off the board`}
              </button>
            </p>
          </div>
        )}
      </li>
    );
  }

  picker(id: string, label: string, value: string, onSlug: (slug: string) => void, none?: string) {
    const box = `board-${this.props.place}-${id}`;
    return (
      <div class="plan-box">
        <label for={box}>
          {label}
          <span class="unseen"> of {this.props.learner.learner}</span>
        </label>
        <select id={box} value={value} onChange={(event) => onSlug(event.currentTarget.value)}>
          {none && <option value="">{none}</option>}
          {this.props.exercises.map(({ slug, title }) => (
            <option key={slug} value={slug} selected={slug === value}>
              {title}
            </option>
          ))}
        </select>
      </div>
    );
  }
}

function minutesOf(text: string): number | undefined {
  const minutes = Number(text.trim().replace(',', '.') || Number.NaN);
  return minutes >= 0 && minutes <= 100_000 ? minutes : undefined;
}
