import { Component, type ComponentType } from 'preact';
import { type Booth, boothParameters, longestTexts, queryOf } from '../../lib/booth/booth-link.ts';
import { shownBoothNumber } from '../../lib/booth/booth-number.ts';
import {
  type BoothWordInLink,
  boothQuantities,
  boothQuantity,
} from '../../lib/booth/booth-quantities.ts';
import type { ExerciseSheet } from '../../lib/booth/exercise-sheet.ts';
import { type System, unitFor, unitSign } from '../../lib/units.ts';
import { currentSystem } from '../Calculator/already-there.ts';
import { to } from '../Page/to.ts';
import Said from '../Reasons/Said.tsx';
import type BoothSheets from './BoothSheets.tsx';
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
import type { fitSheets, fitSheetsSoon } from './fit-sheets.ts';
import type { outOfRange } from './out-of-range.ts';
import type RotationList from './RotationList.tsx';
import { taskBooths } from './task-booths.ts';
import type { Worked, workNumbers } from './work-numbers.ts';

/** What the page offers to choose from, as its own list stands there. */
export interface Group {
  title: string;
  picks: readonly { value: string; title: string }[];
}

export interface Props {
  groups: readonly Group[];
  /** These come in files of their own, beside this one. */
  parts: {
    QrCode: ComponentType<{ text: string; name: string }>;
    BoothSheets: typeof BoothSheets;
    RotationList: typeof RotationList;
    fitSheets: typeof fitSheets;
    fitSheetsSoon: typeof fitSheetsSoon;
    outOfRange: typeof outOfRange;
    workNumbers: typeof workNumbers;
  };
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
const words = Object.keys(boothQuantities) as BoothWordInLink[];

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
    this.setState({ task, problems, rotation: readRotation(location.search) });
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
    const { task, rotation, said, problems } = this.state;
    const { groups } = this.props;
    const { QrCode, BoothSheets, RotationList } = this.props.parts;
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
          {this.numbers()}
          {this.places()}
        </form>
        {task.pick !== '' && !unknown && this.isReady(task.pick) && this.links()}
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

  private numbers() {
    const { task, system, sheets } = this.state;
    const { problems, booths } = taskBooths(task, system);
    const sheet = sheets[task.pick.split('/')[1] ?? ''];
    const exercise = typeof sheet === 'object' ? sheet : undefined;
    const range = exercise && booths[0] && this.props.parts.outOfRange(exercise, booths[0]);
    return (
      <fieldset>
        <legend>
          <h2>What this booth uses</h2>
        </legend>
        <p class="quiet">Leave a box empty, and the lesson’s own number stands.</p>
        <div class="booth-numbers">
          {words.map((word) => {
            const it = boothQuantity(word);
            const id = `booth-${word}`;
            const usual = exercise?.usual[word];
            const change = (text: string) =>
              this.change({ typed: { ...task.typed, [word]: text } });
            return (
              <div key={word} class="field">
                <label for={id}>
                  {it.label}
                  {'unit' in it && ` (${unitSign(unitFor(it.unit, system))})`}
                </label>
                {'choices' in it ? (
                  <select
                    id={id}
                    value={task.typed[word] ?? ''}
                    aria-describedby={`${id}-problem`}
                    onChange={(event) => change(event.currentTarget.value)}
                  >
                    <option value="">as in the lesson</option>
                    {it.choices.map((choice) => (
                      <option key={choice} value={choice}>
                        {choice}
                      </option>
                    ))}
                  </select>
                ) : (
                  <input
                    id={id}
                    type="text"
                    autocomplete="off"
                    spellcheck={false}
                    value={task.typed[word] ?? ''}
                    placeholder={
                      usual ? shownBoothNumber(word, usual.replace(' ', ''))[system] : undefined
                    }
                    aria-invalid={problems[word] !== undefined}
                    aria-describedby={`${id}-problem`}
                    onInput={(event) => change(event.currentTarget.value)}
                  />
                )}
                <p class="problem" id={`${id}-problem`}>
                  {problems[word] && <Said text={problems[word]} />}
                  {word === 'current' && !problems[word] && range}
                </p>
              </div>
            );
          })}
        </div>
      </fieldset>
    );
  }

  private places() {
    const { task, system } = this.state;
    const { problems } = taskBooths(task, system);
    return (
      <fieldset>
        <legend>
          <h2>Whose booth</h2>
        </legend>
        <div class="booth-numbers">
          <div class="field">
            <label for="booth-places">
              Booth or machine; several: <span class="quiet">7-10, 12</span>
            </label>
            <input
              id="booth-places"
              type="text"
              autocomplete="off"
              value={task.places}
              maxLength={200}
              aria-invalid={problems.places !== undefined}
              aria-describedby="booth-places-problem"
              onInput={(event) => this.change({ places: event.currentTarget.value })}
            />
            <p class="problem" id="booth-places-problem">
              {problems.places}
            </p>
          </div>
          <div class="field">
            <label for="booth-group">Group</label>
            <input
              id="booth-group"
              type="text"
              autocomplete="off"
              value={task.group}
              maxLength={longestTexts.group}
              onInput={(event) => this.change({ group: event.currentTarget.value })}
            />
          </div>
          <div class="field">
            <label for="booth-units">Units the link opens in</label>
            <select
              id="booth-units"
              value={task.units}
              onChange={(event) =>
                this.change({ units: event.currentTarget.value as Task['units'] })
              }
            >
              <option value="">the reader’s own</option>
              <option value="us">inch</option>
              <option value="metric">metric</option>
            </select>
          </div>
        </div>
        <div class="field booth-wide">
          <label for="booth-note">Note to the learner</label>
          <input
            id="booth-note"
            type="text"
            autocomplete="off"
            value={task.note}
            maxLength={longestTexts.note}
            aria-describedby="booth-note-help"
            onInput={(event) => this.change({ note: event.currentTarget.value })}
          />
          <p class="field-range" id="booth-note-help">
            Up to {longestTexts.note} letters. It travels in the link, so no names. A shorter note
            makes a coarser code, which is read from farther away.
          </p>
        </div>
      </fieldset>
    );
  }

  private links() {
    const { task, system } = this.state;
    const { booths } = taskBooths(task, system);
    return (
      <section class="screen-only" aria-labelledby="booth-links">
        <h2 id="booth-links">{booths.length === 1 ? 'The link' : `${booths.length} links`}</h2>
        <ul class="booth-links">
          {booths.map((booth) => {
            const link = this.linkOf(task, booth);
            return (
              <li key={booth.place ?? ''}>
                {booth.place && <b>Booth {booth.place} </b>}
                <a href={link}>{link}</a>{' '}
                <button type="button" onClick={() => this.copy(link)}>
                  Copy
                  <span class="unseen"> the link{booth.place && ` of booth ${booth.place}`}</span>
                </button>
              </li>
            );
          })}
        </ul>
      </section>
    );
  }
}

const workKey = (slug: string, { numbers }: Booth): string =>
  `${slug} ${queryOf(boothParameters({ numbers }))}`;

async function fetchSheet(slug: string): Promise<ExerciseSheet | string> {
  try {
    const answered = await fetch(`${to('/')}exercises/${slug}.json`);
    if (answered.ok) return (await answered.json()) as ExerciseSheet;
    return `The exercise “${slug}” could not be fetched. The rest stands.`;
  } catch {
    return `The exercise “${slug}” could not be fetched: no connection. Reload when there is one.`;
  }
}
