import { Component, type ComponentChildren } from 'preact';
import type { ClassExercise } from '../../lib/class/class-exercise.ts';
import { type ClassNeeds, classNeeds } from '../../lib/class/class-needs.ts';
import { planned, type ReadPlan, readPlan } from '../../lib/class/read-plan.ts';
import type { SettingName, TurnField } from '../../lib/class/settings.ts';
import { stillAhead } from '../../lib/class/still-ahead.ts';
import { overfullWeeks, verdict } from '../../lib/class/verdict.ts';
import { type ClassBoard, classBoard } from '../../lib/files/class-board.ts';
import { type ClassPlan, classPlan } from '../../lib/files/class-plan.ts';
import { durationText } from '../../lib/text/clock-text.ts';
import { changed, type Undo, undoOf } from '../../lib/undo.ts';
import { currentSystem } from '../Calculator/already-there.ts';
import CutBars from '../drawings/cut-plan.tsx';
import { download } from '../Shelf/download.ts';
import FileButtons from '../Shelf/FileButtons.tsx';
import { Shelf } from '../Shelf/shelf.ts';
import UndoRow from '../Shelf/UndoRow.tsx';
import ExerciseRows from './ExerciseRows.tsx';
import PlanSheets, { type SheetId, sheets } from './PlanSheets.tsx';
import SettingsForm, { inUnits } from './SettingsForm.tsx';
import TypedBox from './TypedBox.tsx';

export interface PlanData {
  exercises: ClassExercise[];
  /** The demo shop's terms. */
  plans: ClassPlan[];
}

interface State {
  undo: Undo<ClassPlan>;
  said: string;
  trouble: string[];
}

/** Where a class is planned: form, sheets, shelf. */
export default class PlanBench extends Component<PlanData, State> {
  private shelf = new Shelf(classPlan, () => this.props.plans[0] as ClassPlan);
  /** Keys pressed in one box are one step to undo. */
  private box = '';
  private counted: { plan: ClassPlan; read: ReadPlan; needs: ClassNeeds } | undefined;
  private stop: (() => void) | undefined;
  override state: State;

  constructor(props: PlanData) {
    super(props);
    const { data, problem } = this.shelf.take();
    this.state = {
      undo: undoOf(inUnits(data, currentSystem())),
      said: '',
      trouble: problem ? [problem] : [],
    };
  }

  override componentDidMount() {
    addEventListener('units', this.follow);
    this.stop = this.shelf.watch(({ data, problem }) => {
      this.setState({
        undo: changed(this.state.undo, inUnits(data, currentSystem())),
        trouble: problem ? [problem] : [],
        said: 'Another tab has changed this plan; here it is.',
      });
    });
  }

  override componentWillUnmount() {
    removeEventListener('units', this.follow);
    this.stop?.();
  }

  follow = () => {
    const { undo } = this.state;
    this.box = '';
    this.setState({ undo: { ...undo, now: inUnits(undo.now, currentSystem()) } });
  };

  put = (next: ClassPlan, box = '', said = '') => {
    const { undo } = this.state;
    const again = box !== '' && box === this.box;
    this.box = box;
    this.keep(again ? { ...undo, now: next, after: [] } : changed(undo, next), said);
  };

  keep(undo: Undo<ClassPlan>, said: string) {
    const problem = this.shelf.put(undo.now);
    this.setState({ undo, said, trouble: problem ? [problem] : [] });
  }

  step = (to: Undo<ClassPlan>, said: string) => {
    this.box = '';
    this.keep({ ...to, now: inUnits(to.now, currentSystem()) }, said);
  };

  setting = (name: SettingName, text: string) => {
    const plan = this.state.undo.now;
    this.put({ ...plan, settings: { ...plan.settings, [name]: text } }, name);
  };

  pick = (slug: string, picked: boolean) => {
    const plan = this.state.undo.now;
    const others = plan.exercises.filter(({ exercise }) => exercise !== slug);
    this.put({ ...plan, exercises: picked ? [...others, planned(slug)] : others });
  };

  field = (slug: string, field: TurnField, text: string) => {
    const plan = this.state.undo.now;
    const exercises = plan.exercises.map((row) =>
      row.exercise === slug ? { ...row, [field]: text } : row,
    );
    this.put({ ...plan, exercises }, `${slug}.${field}`);
  };

  price = (thing: string, text: string) => {
    const plan = this.state.undo.now;
    this.put({ ...plan, prices: { ...plan.prices, [thing]: text } }, `price.${thing}`);
  };

  start = (place: number) => {
    const plan = this.props.plans[place];
    if (plan) this.put(inUnits(plan, currentSystem()), '', `${plan.name}. Undo brings yours back.`);
  };

  /** Learners of each exercise from the board that this browser keeps. */
  fromBoard = () => {
    const empty: ClassBoard = { name: '', code: 'AWS D1.1', learners: [], booths: [] };
    const { data, problem } = new Shelf(classBoard, () => empty).take();
    if (problem || data.learners.length === 0) {
      this.setState({
        said: problem ? `${problem}.` : 'No class board is kept in this browser yet.',
      });
      return;
    }
    const plan = this.state.undo.now;
    const ahead = stillAhead(
      data,
      this.props.exercises.map(({ slug }) => slug),
    );
    const exercises = plan.exercises.map((row) => ({
      ...row,
      learners: String(ahead.get(row.exercise) ?? 0),
    }));
    const settings = { ...plan.settings, learners: String(data.learners.length) };
    this.put({ ...plan, settings, exercises }, '', 'Learners counted from where each one is.');
  };

  count(): { read: ReadPlan; needs: ClassNeeds } {
    const plan = this.state.undo.now;
    if (this.counted?.plan !== plan) {
      const read = readPlan(plan, this.props.exercises);
      this.counted = { plan, read, needs: classNeeds(read.turns, read.choices) };
    }
    return this.counted;
  }

  /** The writers come when somebody wants a table; whoever only plans never loads them. */
  csv = async (id: SheetId) => {
    const { needs, read } = this.count();
    const system = currentSystem();
    const { cutCsv, purchaseCsv, weekCsv } = await import('../../lib/class/plan-csv.ts');
    const text =
      id === 'purchase'
        ? purchaseCsv(needs, read.prices, system)
        : id === 'cut'
          ? cutCsv(needs, system)
          : weekCsv(needs);
    download(`${sheets[id].toLowerCase().replace(' ', '-')}.csv`, text, 'text/csv');
  };

  print = (id: SheetId) => {
    const root = document.documentElement;
    root.dataset.only = id;
    addEventListener('afterprint', () => delete root.dataset.only, { once: true });
    print();
  };

  actions = (id: SheetId): ComponentChildren =>
    id === 'hours' || id === 'metal' ? null : (
      <p class="plan-actions screen-only">
        <button type="button" onClick={() => this.print(id)}>
          Print this list
        </button>
        <button type="button" onClick={() => this.csv(id)}>
          As a table (CSV)
        </button>
      </p>
    );

  override render() {
    const { undo, said, trouble } = this.state;
    const plan = undo.now;
    const { read, needs } = this.count();
    const { problems } = read;
    return (
      <>
        <section class="plan-form screen-only" aria-labelledby="plan-form-title">
          <h2 id="plan-form-title">Your plan</h2>
          <p class="plan-actions">
            {this.props.plans.map(({ name }, at) => (
              <button type="button" key={name} onClick={() => this.start(at)}>
                Start from {name.replace(/^.*: /, 'the demo ')}
              </button>
            ))}
            <button type="button" onClick={this.fromBoard}>
              Count learners from the class board
            </button>
          </p>
          <FileButtons
            kind={classPlan}
            data={plan}
            onOpen={(data) => this.put(inUnits(data, currentSystem()))}
            onEmpty={() => this.put({ ...plan, name: '', exercises: [], prices: {} })}
          />
          <UndoRow undo={undo} said={said} trouble={trouble} onStep={this.step} />
          <TypedBox
            id="plan-name"
            label="Name of the plan"
            value={plan.name}
            onText={(name) => this.put({ ...plan, name: name.slice(0, 200) }, 'name')}
          />
          <p class="plan-now" role="status">
            <b>
              {durationText(needs.demand.each)} a learner asked, {durationText(needs.supply.each)}{' '}
              there.
            </b>{' '}
            {verdict(needs).booths} {[...overfullWeeks(needs).values()].join(' ')}
          </p>
          <SettingsForm plan={plan} problems={problems} onSetting={this.setting} />
          <details class="plan-group" open>
            <summary>
              <h3>Exercises</h3>
            </summary>
            <p class="problem" role="status">
              {problems.get('exercises') && `${problems.get('exercises')}.`}
            </p>
            <p class="quiet">
              Tick what the class does. An empty box takes what stands in it in gray.
            </p>
            <ExerciseRows
              exercises={this.props.exercises}
              plan={plan}
              problems={problems}
              overfull={overfullWeeks(needs)}
              onPick={this.pick}
              onField={this.field}
            />
          </details>
        </section>
        {plan.exercises.length === 0 && (
          <p>No exercise is ticked yet, so there is nothing to buy.</p>
        )}
        <PlanSheets
          name={plan.name}
          needs={needs}
          prices={read.prices}
          Bars={CutBars}
          actions={this.actions}
          priceBox={(thing) => (
            <TypedBox
              id={`price-${thing.replace(/[^A-Za-z0-9]+/g, '-')}`}
              label="Price"
              of={`of one ${thing.replace(/[{}]/g, '')}`}
              value={plan.prices[thing] ?? ''}
              problem={problems.get(`price.${thing}`)}
              onText={(text) => this.price(thing, text)}
            />
          )}
        />
      </>
    );
  }
}
