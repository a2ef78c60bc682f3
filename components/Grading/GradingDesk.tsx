import { Component } from 'preact';
import type { ExerciseSheet } from '../../lib/booth/exercise-sheet.ts';
import type { GradedCoupon, GradedExercise, GradingBook } from '../../lib/files/grading-book.ts';
import { type Rubric, rubricOf, standardRubric } from '../../lib/grading/rubric.ts';
import { changed, redone, type Undo, undone, undoOf } from '../../lib/undo.ts';
import type { System } from '../../lib/units.ts';
import { fetchSheet } from '../Booth/fetch-sheet.ts';
import type { Offered } from '../Booth/pick-groups.ts';
import { currentSystem } from '../Calculator/already-there.ts';
import Said from '../Reasons/Said.tsx';
import { today } from '../Shelf/today.ts';
import type * as files from './grading-files.ts';
import type * as judged from './grading-rubric.ts';
import type * as tables from './grading-tables.ts';

export type Parts = typeof files & typeof judged & typeof tables;

interface Props extends Offered {
  /** Keeping, judging and tables, from files of their own. */
  parts: Parts;
}
interface State {
  pick: string;
  sheet: ExerciseSheet | string | undefined;
  book: Undo<GradingBook>;
  /** Place of the coupon in hand. */
  at: number;
  system: System;
  said: readonly string[];
}

/** Readings against limits, coupon by coupon; the book lies on the shelf. */
export default class GradingDesk extends Component<Props, State> {
  private shelf = this.props.parts.gradingShelf();
  private leave = () => {};
  private chooser: HTMLInputElement | null = null;

  override state: State = {
    pick: '',
    sheet: undefined,
    book: undoOf(this.props.parts.emptyBook()),
    at: 0,
    system: currentSystem(),
    said: [],
  };

  override componentDidMount() {
    const { data, problem } = this.shelf.take();
    this.setState({ book: undoOf(data), said: problem ? [problem] : [] });
    this.leave = this.shelf.watch(({ data: other, problem: trouble }) =>
      this.setState({ book: undoOf(other), at: 0, said: trouble ? [trouble] : [] }),
    );
    addEventListener('units', this.follow);
    const asked = new URLSearchParams(location.search).get('exercise') ?? this.props.chosen;
    if (asked) this.choose(asked);
  }

  override componentWillUnmount() {
    this.leave();
    removeEventListener('units', this.follow);
  }

  follow = () => this.setState({ system: currentSystem() });

  known = (slug: string) =>
    this.props.groups.some(({ picks }) => picks.some(({ value }) => value === slug));

  async choose(slug: string) {
    if (slug !== '' && !this.known(slug)) {
      this.setState({
        pick: '',
        sheet: undefined,
        said: [
          `Exercise “${slug.slice(0, 40)}” is not on this site, or no longer. Choose another one`,
        ],
      });
      return;
    }
    this.setState({ pick: slug, sheet: undefined, at: 0, said: [] });
    if (slug === '') return;
    const sheet = await fetchSheet(slug);
    if (this.state.pick === slug) this.setState({ sheet });
  }

  exercise(): GradedExercise {
    return (
      this.state.book.now.exercises[this.state.pick] ?? { rubric: standardRubric, coupons: [] }
    );
  }

  private put(book: Undo<GradingBook>, said: readonly string[] = [], at = this.state.at) {
    const problem = this.shelf.put(book.now);
    this.setState({ book, at, said: problem ? [...said, problem] : said });
  }

  keep(exercise: GradedExercise, said: readonly string[] = [], at = this.state.at) {
    const { book, pick } = this.state;
    const exercises = { ...book.now.exercises, [pick]: exercise };
    this.put(changed(book, { exercises }), said, at);
  }

  changeCoupon(part: Partial<GradedCoupon>) {
    const { rubric, coupons } = this.exercise();
    const { at } = this.state;
    this.keep({
      rubric,
      coupons: coupons.map((one, place) => (place === at ? { ...one, ...part } : one)),
    });
  }

  addCoupon = () => {
    const { rubric, coupons } = this.exercise();
    const last = coupons.at(-1);
    const fresh = {
      learner: '',
      attempt: '1',
      on: today(),
      grader: last?.grader ?? '',
      note: '',
      readings: {},
    };
    this.keep({ rubric, coupons: [...coupons, fresh] }, [], coupons.length);
    // Its boxes come out of nothing: whoever pressed the button goes on in the first.
    this.setState({}, () => document.getElementById('grading-learner')?.focus());
  };

  removeCoupon = () => {
    const { rubric, coupons } = this.exercise();
    const { at } = this.state;
    this.keep(
      { rubric, coupons: coupons.filter((_, place) => place !== at) },
      ['Taken out. Undo brings it back'],
      Math.max(0, at - 1),
    );
  };

  changeRubric(part: Partial<Rubric>) {
    const { rubric, coupons } = this.exercise();
    this.keep({ rubric: { ...rubric, ...part }, coupons });
  }

  openTable = async (sheet: ExerciseSheet) => {
    const file = this.chooser?.files?.[0];
    if (!file || !this.chooser) return;
    const { readGrading, merged } = this.props.parts;
    let said: string[];
    try {
      const read = readGrading(await file.text(), sheet.slug, sheet.points);
      if (read.ok) {
        const { rubric, coupons } = this.exercise();
        this.keep({ rubric, coupons: merged(coupons, read.coupons) });
        said = [`${read.coupons.length} coupons read`, ...read.notes.slice(0, 8)];
      } else said = [`${read.problem}. Nothing was changed`];
    } catch {
      said = ['This file could not be read. Nothing was changed'];
    }
    this.chooser.value = '';
    this.setState({ said });
  };

  saveTable = (sheet: ExerciseSheet, learner?: string) => {
    const { writeGrading, download } = this.props.parts;
    const { rubric, coupons } = this.exercise();
    const some = coupons.filter((one) => learner === undefined || one.learner === learner);
    const name = ['grading', sheet.slug, learner].filter(Boolean).join('-');
    download(
      `${name.replace(/[^\w-]+/g, '_')}.csv`,
      writeGrading(sheet.slug, sheet.points, { rubric, coupons: some }, this.state.system),
      'text/csv',
    );
  };

  saveRecord = (sheet: ExerciseSheet, learner: string) => {
    const { rubric, coupons } = this.exercise();
    this.props.parts.saveRecord(
      sheet,
      learner,
      rubric,
      coupons.filter((one) => one.learner === learner),
      this.state.system,
      today(),
    );
  };

  override render() {
    const { pick, sheet, book, said } = this.state;
    const { FileButtons, gradingBook } = this.props.parts;
    return (
      <>
        <div class="field screen-only">
          <label for="grading-pick">Exercise</label>
          <select
            id="grading-pick"
            value={pick}
            onChange={(event) => this.choose(event.currentTarget.value)}
          >
            <option value="">Choose …</option>
            {this.props.groups.map(({ title, picks }) => (
              <optgroup key={title} label={title}>
                {picks.map(({ value, title: name }) => (
                  <option key={value} value={value}>
                    {name}
                  </option>
                ))}
              </optgroup>
            ))}
          </select>
        </div>
        <div role="status">
          {said.map((text) => (
            <p key={text} class="grading-said">
              <Said text={text} />.
            </p>
          ))}
          {pick !== '' && typeof sheet !== 'object' && <p>{sheet ?? 'Fetching the exercise …'}</p>}
        </div>
        {typeof sheet === 'object' && this.graded(sheet)}
        <p class="grading-actions screen-only">
          <button
            type="button"
            disabled={book.before.length === 0}
            onClick={() => this.put(undone(book), [], 0)}
          >
            Undo
          </button>
          <button
            type="button"
            disabled={book.after.length === 0}
            onClick={() => this.put(redone(book), [], 0)}
          >
            Do again
          </button>
        </p>
        <FileButtons
          kind={gradingBook}
          data={book.now}
          onOpen={(data: GradingBook) =>
            this.put(changed(book, data), ['Opened. Undo brings back what was here'], 0)
          }
          onEmpty={() => this.put(changed(book, this.props.parts.emptyBook()), [], 0)}
        />
      </>
    );
  }

  private graded(sheet: ExerciseSheet) {
    const { at, system } = this.state;
    const { grade, CouponForm, GradedList, RubricForm } = this.props.parts;
    const { rubric, coupons } = this.exercise();
    const verdicts = coupons.map((one) => grade(sheet.points, one.readings, rubric, system));
    const coupon = coupons[at];
    const verdict = verdicts[at];
    return (
      <>
        <h2>{sheet.title}</h2>
        <GradedList
          sheet={sheet}
          coupons={coupons}
          verdicts={verdicts}
          at={at}
          onChoose={(place) => this.setState({ at: place })}
        />
        <p class="grading-actions screen-only">
          <button type="button" onClick={this.addCoupon}>
            Add a coupon
          </button>
          <button
            type="button"
            disabled={coupons.length === 0}
            onClick={() => this.saveTable(sheet)}
          >
            Save all as CSV
          </button>
          <button type="button" onClick={() => this.chooser?.click()}>
            Open a CSV
          </button>
          <input
            ref={(box) => {
              this.chooser = box;
            }}
            type="file"
            accept=".csv,text/csv"
            aria-label="Open a CSV"
            hidden
            onChange={() => this.openTable(sheet)}
          />
          <button type="button" disabled={coupons.length === 0} onClick={() => print()}>
            Print
          </button>
        </p>
        {coupon && verdict && (
          <CouponForm
            key={at}
            sheet={sheet}
            coupon={coupon}
            verdict={verdict}
            onChange={(part) => this.changeCoupon(part)}
            onRemove={this.removeCoupon}
            onSaveTable={() => this.saveTable(sheet, coupon.learner)}
            onSaveRecord={() => this.saveRecord(sheet, coupon.learner)}
          />
        )}
        <RubricForm
          points={sheet.points}
          rubric={rubric}
          onPassMark={(passMark) => this.changeRubric({ passMark })}
          onPoint={(item, part) =>
            this.changeRubric({
              points: { ...rubric.points, [item]: { ...rubricOf(rubric, item), ...part } },
            })
          }
        />
      </>
    );
  }
}
