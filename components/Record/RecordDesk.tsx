import { Component } from 'preact';
import { emptyRecord, type LearnerRecord, learnerRecord } from '../../lib/files/learner-record.ts';
import { type Due, roundOn } from '../../lib/practice/review.ts';
import { mergeLearnerRecords } from '../../lib/record/merge-learner-records.ts';
import { withProblem } from '../../lib/record/record-changes.ts';
import { type ExerciseAsks, wanted } from '../../lib/record/wanted.ts';
import type { System } from '../../lib/units.ts';
import { currentSystem } from '../Calculator/already-there.ts';
import { to } from '../Page/to.ts';
import FileButtons from '../Shelf/FileButtons.tsx';
import { today } from '../Shelf/today.ts';
import Coupons from './Coupons.tsx';
import HandInForm from './HandInForm.tsx';
import { recordShelf } from './keep.ts';
import ReviewRound from './ReviewRound.tsx';
import Wanted from './Wanted.tsx';

export interface RecordLists {
  lessons: readonly { id: string; title: string; calculations: readonly string[] }[];
  exercises: readonly (ExerciseAsks & { title: string; checks: number })[];
}
interface State {
  record: LearnerRecord;
  /** What was there before each change. */
  before: readonly LearnerRecord[];
  round: readonly Due[] | undefined;
  system: System;
  said: string;
}

/** One learner's record: what is next, today's round, coupons, files. */
export default class RecordDesk extends Component<RecordLists, State> {
  private shelf = recordShelf();
  private leave = () => {};
  private now = today();
  override state: State = {
    record: emptyRecord(),
    before: [],
    round: undefined,
    system: currentSystem(),
    said: '',
  };

  override componentDidMount() {
    const { data, problem } = this.shelf.take();
    this.setState({ record: data, said: problem ? `${problem}.` : '' });
    this.leave = this.shelf.watch(({ data: record, problem: trouble }) =>
      this.setState({ record, before: [], said: trouble ? `${trouble}.` : '' }),
    );
    addEventListener('units', this.follow);
  }
  override componentWillUnmount() {
    this.leave();
    removeEventListener('units', this.follow);
  }
  follow = () => this.setState({ system: currentSystem() });

  put(record: LearnerRecord, said = '', before = [...this.state.before, this.state.record]) {
    const trouble = this.shelf.put(record);
    this.setState({ record, before, said: trouble ? `${trouble}.` : said });
  }
  undo = () => {
    const last = this.state.before.at(-1);
    if (last) this.put(last, 'Undone.', this.state.before.slice(0, -1));
  };
  open = (other: LearnerRecord) => {
    const { record } = this.state;
    const two = record.learner && other.learner && record.learner !== other.learner;
    this.put(
      mergeLearnerRecords(record, other),
      two
        ? `The file is of learner ${other.learner}, and this record of ${record.learner}. It was added; Undo takes it back.`
        : 'Added to what was here. Undo takes it back.',
    );
  };

  override render({ lessons, exercises }: RecordLists) {
    const { record, before, said } = this.state;
    const read = lessons.filter(({ id }) => record.lessonsRead.some((it) => it.lesson === id));
    const solved = record.problems.filter((it) => it.solved).length;
    return (
      <>
        <div class="field record-learner">
          <label for="record-learner">Your number or initials</label>
          <input
            id="record-learner"
            autocomplete="off"
            maxLength={200}
            value={record.learner}
            onChange={(event) => this.put({ ...record, learner: event.currentTarget.value })}
          />
        </div>
        <h2>Next</h2>
        {this.next(lessons, exercises)}
        {this.review()}
        <h2>Coupons</h2>
        <Coupons exercises={exercises} record={record} system={this.state.system} />
        <p>
          A share of coupons is a count, no permit. Your instructor decides when you are ready, and
          may want more than stands here.
        </p>
        <HandInForm
          exercises={exercises}
          today={this.now}
          onAdd={(coupon) => this.put({ ...record, coupons: [...record.coupons, coupon] })}
        />
        <h2>Lessons read</h2>
        <p>{read.length === 0 ? 'None yet.' : read.map(({ title }) => title).join('; ')}</p>
        <p>
          Problems: {solved} solved of {record.problems.length} worked.
        </p>
        <p class="print-only">Instructor: ____________________ Date: ____________</p>
        <p role="status">{said}</p>
        <p class="record-actions screen-only">
          <button type="button" disabled={before.length === 0} onClick={this.undo}>
            Undo
          </button>
          <button type="button" onClick={() => print()}>
            Print
          </button>
        </p>
        <p class="screen-only">
          Undo goes back as far as the moment this page was opened; leaving it or reloading ends
          that. Opening a file adds what is in it to what is here; nothing is taken away.
        </p>
        <FileButtons
          kind={learnerRecord}
          data={record}
          onOpen={this.open}
          onEmpty={() => this.put(emptyRecord())}
        />
      </>
    );
  }

  next(lessons: RecordLists['lessons'], exercises: RecordLists['exercises']) {
    const { record } = this.state;
    const lesson = lessons.find(({ id }) => !record.lessonsRead.some((it) => it.lesson === id));
    const exercise = exercises.find(
      ({ id }) => !record.coupons.some((it) => it.exercise === id && it.result === 'passed'),
    );
    return (
      <ul>
        {lesson && (
          <li>
            To read: <a href={`${to('/')}lessons/${lesson.id}/`}>{lesson.title}</a>
          </li>
        )}
        {exercise && (
          <li>
            At the booth: <a href={`${to('/')}exercises/${exercise.id}/`}>{exercise.title}</a>
            <Wanted sentences={wanted(record.coupons, exercise)} system={this.state.system} />
          </li>
        )}
      </ul>
    );
  }

  review() {
    const { record, round, system } = this.state;
    if (round)
      return (
        <ReviewRound
          round={round}
          today={this.now}
          system={system}
          onSolved={(problem) => this.put(withProblem(this.state.record, problem))}
          onEnd={() => this.setState({ round: undefined, said: 'Round ended.' })}
        />
      );
    const due = roundOn(this.now, this.props.lessons, record);
    if (due.length === 0)
      return (
        <p class="screen-only">No problems to take up today. What you read comes back later.</p>
      );
    return (
      <p class="screen-only">
        <button type="button" onClick={() => this.setState({ round: due })}>
          Take up {due.length} {due.length === 1 ? 'problem' : 'problems'} from lessons read
        </button>
      </p>
    );
  }
}
