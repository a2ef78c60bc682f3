import { Component, type ComponentType } from 'preact';
import { type Booth, boothParameters, queryOf } from '../../lib/booth/booth-link.ts';
import type { ExerciseSheet } from '../../lib/booth/exercise-sheet.ts';
import type { System } from '../../lib/units.ts';
import { currentSystem } from '../Calculator/already-there.ts';
import { to } from '../Page/to.ts';
import Said from '../Reasons/Said.tsx';
import type { Printed } from './BoothSheets.tsx';
import {
  deskQuery,
  emptyTask,
  mostTasks,
  readRotation,
  readTask,
  type Task,
  taskQuery,
} from './desk-address.ts';
import type * as forms from './desk-forms.ts';
import type * as parts from './desk-parts.ts';
import { fetchSheet } from './fetch-sheet.ts';
import type { Offered } from './pick-groups.ts';
import { taskBooths } from './task-booths.ts';
import type { Worked, workNumbers } from './work-numbers.ts';

export interface Props extends Offered {
  /** These come in files of their own, beside this one. */
  parts: {
    QrCode: ComponentType<{ text: string; name: string }>;
    workNumbers: typeof workNumbers;
  } & typeof parts &
    typeof forms;
}

interface State {
  task: Task;
  rotation: readonly string[];
  system: System;
  /** By slug: the sheet, or a sentence on why there is none. */
  sheets: Readonly<Record<string, ExerciseSheet | string>>;
  /** By task and numbers. */
  worked: Readonly<Record<string, Worked>>;
  said: string;
  problems: readonly string[];
}

const fetching = 'Fetching the exercise …';
const ready = 'Link and sheet are ready below.';

/** Choose a task, set what the booth uses, take the link, print the sheets. */
export default class BoothDesk extends Component<Props, State> {
  override state: State = {
    task: emptyTask,
    rotation: [],
    system: currentSystem(),
    sheets: {},
    worked: {},
    said: '',
    problems: [],
  };
  private asked = new Set<string>();

  override componentDidMount() {
    const { task, problems } = readTask(location.search);
    addEventListener('units', this.follow);
    addEventListener('beforeprint', this.props.parts.fitSheets);
    const rotation = readRotation(location.search);
    this.setState({ task, problems, rotation }, () => {
      const { chosen } = this.props;
      if (chosen && task.pick === '') this.pick(chosen);
    });
  }

  override componentWillUnmount() {
    removeEventListener('units', this.follow);
    removeEventListener('beforeprint', this.props.parts.fitSheets);
  }

  override componentDidUpdate() {
    for (const { task, booth } of this.booths()) if (this.titleOf(task.pick)) this.ask(task, booth);
    this.props.parts.fitSheetsSoon();
  }

  follow = () => this.setState({ system: currentSystem() });

  change(part: Partial<Task>) {
    this.keep({ ...this.state.task, ...part }, this.state.rotation);
  }

  pick(pick: string) {
    this.keep({ ...this.state.task, pick }, this.state.rotation);
    if (this.isReady(pick)) this.setState({ said: ready });
  }

  /** A link to an exercise leads to its lesson, which is known once the exercise is there. */
  isReady(pick: string): boolean {
    const [kind, slug = ''] = pick.split('/');
    return kind === 'lesson' || this.state.sheets[slug] !== undefined;
  }

  keep(task: Task, rotation: readonly string[], said = '') {
    this.setState({ task, rotation, said, problems: [] });
    const query = deskQuery(task, rotation);
    try {
      history.replaceState(history.state, '', query === '' ? location.pathname : `?${query}`);
    } catch {
      // Some browsers limit how often; the next key writes it.
    }
  }

  /** Every booth of the rotation, then those of the task at hand. */
  booths(): { task: Task; booth: Booth; key: string }[] {
    const { task, rotation, system } = this.state;
    return [...rotation.map((query) => readTask(query).task), task].flatMap((one, place) =>
      taskBooths(one, system).booths.map((booth) => ({
        task: one,
        booth,
        key: `${place}-${booth.place ?? ''}`,
      })),
    );
  }

  printed(): Printed[] {
    return this.booths().flatMap(({ task, booth, key }): Printed[] => {
      const title = this.titleOf(task.pick);
      if (title === undefined) return [];
      const [kind, slug = ''] = task.pick.split('/');
      const exercise = kind === 'exercise';
      return [
        {
          key,
          title,
          booth,
          link: this.linkOf(task, booth),
          sheet: exercise ? (this.state.sheets[slug] ?? fetching) : undefined,
          worked: exercise ? this.state.worked[workKey(slug, booth)] : undefined,
        },
      ];
    });
  }

  titleOf(pick: string): string | undefined {
    for (const { picks } of this.props.groups)
      for (const one of picks) if (one.value === pick) return one.title;
    return undefined;
  }

  /** Fetches what a sheet needs, once. */
  async ask({ pick }: Task, booth: Booth) {
    const [kind, slug = ''] = pick.split('/');
    if (kind !== 'exercise') return;
    const { sheets } = this.state;
    const sheet = sheets[slug];
    if (sheet === undefined) {
      if (this.asked.has(slug)) return;
      this.asked.add(slug);
      const found = await fetchSheet(slug);
      this.setState((now) => ({
        sheets: { ...now.sheets, [slug]: found },
        said: typeof found === 'string' ? '' : ready,
      }));
      return;
    }
    if (typeof sheet === 'string') return;
    const key = workKey(slug, booth);
    if (this.asked.has(key)) return;
    this.asked.add(key);
    const done = await this.props.parts.workNumbers(sheet.numbers, booth.numbers);
    this.setState((now) => ({ worked: { ...now.worked, [key]: done } }));
  }

  linkOf({ pick }: Task, booth: Booth): string {
    const [kind, slug = ''] = pick.split('/');
    const sheet = this.state.sheets[slug];
    const lesson =
      kind === 'lesson' ? slug : typeof sheet === 'object' ? sheet.lesson.slug : undefined;
    const path = `${to('/')}lessons/${lesson ? `${lesson}/` : ''}`;
    return `${location.origin}${path}?${queryOf(boothParameters(booth))}`;
  }

  add = () => {
    const { task, rotation } = this.state;
    if (rotation.length >= mostTasks) {
      this.setState({ said: `A rotation holds at most ${mostTasks} tasks.` });
      return;
    }
    this.keep(
      { ...task, places: '', note: '' },
      [...rotation, taskQuery(this.canonical(task))],
      'Added. Choose the next task or booth.',
    );
  };

  /** Bare numbers with the unit they were typed in, so that another reader's units change nothing. */
  canonical(task: Task): Task {
    const [first] = taskBooths(task, this.state.system).booths;
    return { ...task, typed: first?.numbers ?? {} };
  }

  print(what: 'sheets' | 'codes') {
    document.body.classList.toggle('print-codes', what === 'codes');
    print();
  }

  copy = async (link: string) => {
    try {
      await navigator.clipboard.writeText(link);
      this.setState({ said: 'Copied.' });
    } catch {
      this.setState({ said: 'Select the link and copy it.' });
    }
  };

  override render() {
    const { task, rotation, said, problems, system, sheets } = this.state;
    const { groups } = this.props;
    const { QrCode, BoothSheets, LinkList, NumbersForm, PlacesForm, RotationList } =
      this.props.parts;
    const read = taskBooths(task, system);
    const sheet = sheets[task.pick.split('/')[1] ?? ''];
    const printed = this.printed();
    // Until then the codes would lead to no lesson.
    const unready = printed.length === 0 || printed.some(({ sheet }) => sheet === fetching);
    const unknown = task.pick !== '' && this.titleOf(task.pick) === undefined;
    return (
      <>
        <form
          class="booth-desk screen-only"
          noValidate
          onSubmit={(event) => event.preventDefault()}
        >
          <div class="field">
            <label for="booth-pick">Exercise, or lesson alone</label>
            <select
              id="booth-pick"
              value={unknown ? '' : task.pick}
              aria-describedby="booth-pick-problem"
              onChange={(event) => this.pick(event.currentTarget.value)}
            >
              <option value="">Choose …</option>
              {groups.map(({ title, picks }) => (
                <optgroup key={title} label={title}>
                  {picks.map(({ value, title: name }) => (
                    <option key={value} value={value}>
                      {name}
                    </option>
                  ))}
                </optgroup>
              ))}
            </select>
            <p class="problem" id="booth-pick-problem" role="status">
              {unknown &&
                `Exercise “${task.pick.split('/')[1]?.slice(0, 40)}” is not on this site, or no longer. Choose another one; the numbers below are kept.`}
            </p>
          </div>
          {problems.map((problem) => (
            <p key={problem} class="problem">
              <Said text={problem} />
            </p>
          ))}
          <NumbersForm
            typed={task.typed}
            system={system}
            problems={read.problems}
            exercise={typeof sheet === 'object' ? sheet : undefined}
            booth={read.booths[0]}
            onType={(typed) => this.change({ typed })}
          />
          <PlacesForm
            task={task}
            problem={read.problems.places}
            onChange={(part) => this.change(part)}
          />
        </form>
        {task.pick !== '' && !unknown && this.isReady(task.pick) && (
          <LinkList
            links={read.booths.map((booth) => ({
              place: booth.place,
              link: this.linkOf(task, booth),
            }))}
            onCopy={this.copy}
          />
        )}
        <p class="booth-actions screen-only">
          <button type="button" disabled={task.pick === '' || unknown} onClick={this.add}>
            Add to the rotation
          </button>
          <button type="button" disabled={unready} onClick={() => this.print('sheets')}>
            Print {printed.length === 1 ? 'the sheet' : `${printed.length} sheets`}
          </button>
          <button type="button" disabled={unready} onClick={() => this.print('codes')}>
            Print the codes large, A5
          </button>
          <span role="status">{said}</span>
        </p>
        <RotationList
          names={rotation.map((query) => {
            const one = readTask(query).task;
            return { name: this.titleOf(one.pick), places: one.places };
          })}
          onTakeOut={(place) =>
            this.keep(
              task,
              rotation.filter((_, other) => other !== place),
            )
          }
        />
        <BoothSheets printed={printed} QrCode={QrCode} />
      </>
    );
  }
}

const workKey = (slug: string, { numbers }: Booth): string =>
  `${slug} ${queryOf(boothParameters({ numbers }))}`;
