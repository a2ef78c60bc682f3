import { Component } from 'preact';
import { ovenText } from '../../lib/electrode-log/event-words.ts';
import { type Counted, holderAt, type NotCounted } from '../../lib/electrode-log/holder-at.ts';
import { logCsv } from '../../lib/electrode-log/log-csv.ts';
import { logSheet } from '../../lib/electrode-log/log-sheet.ts';
import { readOven } from '../../lib/electrode-log/read-row.ts';
import { readWhen, type TypedWhen, typedWhen } from '../../lib/electrode-log/read-when.ts';
import { isZone, wallTime } from '../../lib/electrode-log/wall-time.ts';
import {
  type ElectrodeLog,
  electrodeLog,
  emptyLog,
  type Holder,
  instantOf,
} from '../../lib/files/electrode-log.ts';
import { changed, type Undo, undoOf } from '../../lib/undo.ts';
import type { System } from '../../lib/units.ts';
import { currentSystem } from '../Calculator/already-there.ts';
import TypedBox from '../ClassPlan/TypedBox.tsx';
import { download } from '../Shelf/download.ts';
import FileButtons from '../Shelf/FileButtons.tsx';
import { Shelf } from '../Shelf/shelf.ts';
import UndoRow from '../Shelf/UndoRow.tsx';
import { type DemoEvening, demoLog } from './demo-log.ts';
import HolderCard from './HolderCard.tsx';
import LogSheet from './LogSheet.tsx';
import MomentForm from './MomentForm.tsx';
import NewHolder from './NewHolder.tsx';
import Warnings from './Warnings.tsx';

interface State {
  undo: Undo<ElectrodeLog>;
  said: string;
  trouble: string[];
  /** The minute that the clock shows, as an instant. */
  now: number;
  chosen: TypedWhen | undefined;
  /** As typed; until then the last reading of the evening. */
  oven: string | undefined;
  ovenProblem: string | undefined;
  by: string;
  system: System;
  /** How far back the sheet goes, in hours. */
  back: string;
}

const minute = 60_000;
const hour = 60 * minute;
const thisMinute = (): number => Math.floor(Date.now() / minute) * minute;
const deviceZone = (): string => {
  const { timeZone } = new Intl.DateTimeFormat().resolvedOptions();
  return isZone(timeZone) ? timeZone : 'UTC';
};

/** The electrode log at work: holders, what happened to them, files, and the sheet to print. */
export default class LogDesk extends Component<{ demo: DemoEvening }, State> {
  private device = deviceZone();
  private title = document.title;
  private shelf = new Shelf(electrodeLog, () => emptyLog(this.device));
  private stop: (() => void) | undefined;
  private clock: ReturnType<typeof setInterval> | undefined;
  private names: readonly string[] = [];
  private keys = new Map<string, number>();
  private lastKey = 0;
  private example: ElectrodeLog | undefined;
  override state: State;

  constructor(props: { demo: DemoEvening }) {
    super(props);
    const { data, problem } = this.shelf.take();
    this.state = {
      undo: undoOf(data),
      said: '',
      trouble: problem ? [problem] : [],
      now: thisMinute(),
      chosen: undefined,
      oven: undefined,
      ovenProblem: undefined,
      by: '',
      system: currentSystem(),
      back: '24',
    };
  }

  override componentDidMount() {
    this.stop = this.shelf.watch(({ data, problem }) =>
      this.setState({
        undo: changed(this.state.undo, data),
        trouble: problem ? [problem] : [],
        said: 'Another tab has changed this log; here it is.',
      }),
    );
    this.clock = setInterval(this.tick, 5_000);
    // A phone that slept shows the right minute as soon as it wakes.
    document.addEventListener('visibilitychange', this.tick);
    addEventListener('beforeprint', this.tick);
    addEventListener('units', this.follow);
  }

  /** Seen from another tab too: how many are warned of now. */
  override componentDidUpdate() {
    const { undo, chosen, now } = this.state;
    if (chosen) return;
    const zone = this.zoneOf(undo.now);
    const warned = undo.now.holders.filter((holder) => {
      const found = holderAt(holder, now, zone);
      return found.counted && found.warning;
    }).length;
    document.title = warned > 0 ? `(${warned}) ${this.title}` : this.title;
  }

  override componentWillUnmount() {
    this.stop?.();
    clearInterval(this.clock);
    document.removeEventListener('visibilitychange', this.tick);
    removeEventListener('beforeprint', this.tick);
    removeEventListener('units', this.follow);
  }

  tick = () => {
    const now = thisMinute();
    if (now !== this.state.now) this.setState({ now });
  };

  follow = () => this.setState({ system: currentSystem() });

  keep(undo: Undo<ElectrodeLog>, said = '') {
    const problem = this.shelf.put(undo.now);
    this.setState({ undo, said, trouble: problem ? [problem] : [] });
  }

  put = (next: ElectrodeLog, said = '') => this.keep(changed(this.state.undo, next), said);

  /** The moment of the example goes with it. */
  step = (to: Undo<ElectrodeLog>, said: string) => {
    const { undo, chosen } = this.state;
    this.keep(to, said);
    const back = to.after.length > undo.after.length;
    this.setState({ chosen: back && undo.now === this.example ? undefined : chosen });
  };

  putHolder = (place: number, holder: Holder | undefined, said: string) => {
    const log = this.state.undo.now;
    const old = log.holders[place];
    if (holder && old && holder.name !== old.name) {
      this.keys.set(holder.name, this.keyOf(old.name));
      this.keys.delete(old.name);
    }
    const by = holder?.rows.at(-1)?.by;
    if (by && holder.rows.length > (old?.rows.length ?? 0)) this.setState({ by });
    this.put(
      { ...log, holders: log.holders.flatMap((it, at) => (at === place ? (holder ?? []) : it)) },
      said,
    );
  };

  /** A card stays the same card when its holder gets another name. */
  keyOf(name: string): number {
    const key = this.keys.get(name) ?? ++this.lastKey;
    this.keys.set(name, key);
    return key;
  }

  /** The zone whose clock the log counts by: its own, if this browser knows it. */
  zoneOf({ zone }: ElectrodeLog): string {
    return isZone(zone) ? zone : this.device;
  }

  /** What was typed, or the newest reading of the last twelve hours. */
  ovenTyped(): string {
    const { oven, undo, now } = this.state;
    if (oven !== undefined) return oven;
    const newest = undo.now.holders
      .flatMap(({ rows }) => rows)
      .filter((row) => row.event === 'in oven' && now - instantOf(row.at) < 12 * hour)
      .sort((a, b) => instantOf(a.at) - instantOf(b.at))
      .at(-1);
    return newest ? ovenText(newest) : '';
  }

  readOven = () => {
    const read = readOven(this.ovenTyped(), this.state.system);
    if (!('problem' in read)) return read;
    this.setState({ ovenProblem: read.problem });
    document.getElementById('log-oven')?.focus();
    return undefined;
  };

  override render() {
    const { undo, said, trouble, now, chosen, system, by, back } = this.state;
    const log = undo.now;
    const zone = this.zoneOf(log);
    const read = chosen && readWhen(chosen, zone);
    const moment = read?.ok ? read.at : undefined;
    const at = moment ?? now;
    const names = log.holders.map(({ name }) => name);
    if (names.join('\n') !== this.names.join('\n')) this.names = names;
    const found = log.holders.map((holder) => holderAt(holder, at, zone));
    const oven = this.ovenTyped();
    const from = back === '' ? Number.NEGATIVE_INFINITY : at - Number(back) * hour;
    const example = (
      <button type="button" onClick={this.showDemo}>
        Show an example evening
      </button>
    );
    return (
      <>
        <section class="plan-form electrode-log screen-only" aria-labelledby="log-title">
          <h2 id="log-title">Your log</h2>
          <UndoRow undo={undo} said={said} trouble={trouble} onStep={this.step} />
          {zone !== this.device && (
            <p class="plan-actions">
              <span>
                This log goes by the clock of {zone.replaceAll('_', ' ')}; this device is in{' '}
                {this.device.replaceAll('_', ' ')}. The hours out are the same.
              </span>
              <button type="button" onClick={() => this.put({ ...log, zone: this.device })}>
                Show the clock of this device
              </button>
            </p>
          )}
          <Warnings holders={log.holders} found={found} />
          {log.holders.length > 0 && (
            <>
              <h3>Moment</h3>
              <MomentForm
                now={now}
                zone={zone}
                chosen={chosen}
                onChosen={(next) => this.setState({ chosen: next })}
              />
            </>
          )}
          <h3>Holders{moment !== undefined && ` on ${wallTime(at, zone).day}`}</h3>
          {log.holders.length === 0 ? (
            <>
              <p>Nothing is in the log yet. Begin with the can that you open, or with a quiver.</p>
              <p>{example}</p>
            </>
          ) : (
            <div class="plan-boxes">
              <TypedBox
                id="log-oven"
                label="The oven reads"
                value={oven}
                unit={system === 'us' ? '°F' : '°C'}
                hint="Its thermometer. “Returned now” writes this down."
                problem={this.state.ovenProblem}
                onText={(text) => this.setState({ oven: text, ovenProblem: undefined })}
              />
              <TypedBox
                id="log-by"
                label="Written by"
                value={by}
                hint="Initials, for the next rows; may stay empty."
                onText={(text) => this.setState({ by: text.slice(0, 40) })}
              />
            </div>
          )}
          <ul class="plan-exercises log-holders">
            {log.holders.map((holder, place) => (
              <HolderCard
                key={this.keyOf(holder.name)}
                place={place}
                holder={holder}
                found={found[place] as Counted | NotCounted}
                names={this.names}
                zone={zone}
                system={system}
                now={now}
                chosen={moment}
                oven={oven}
                by={by}
                readOven={this.readOven}
                onHolder={this.putHolder}
              />
            ))}
          </ul>
          <h3>New holder</h3>
          <NewHolder
            holders={log.holders}
            names={this.names}
            now={now}
            zone={zone}
            by={by}
            onHolder={(holder, what) =>
              this.put(
                {
                  zone: log.holders.length === 0 ? this.device : log.zone,
                  holders: [...log.holders, holder],
                },
                what,
              )
            }
          />
          <h3>Keep it and hand it on</h3>
          <FileButtons
            kind={electrodeLog}
            data={log}
            onOpen={(data) => this.put(data)}
            onEmpty={() => this.put(emptyLog(this.device))}
          />
          <p class="plan-actions">
            <button
              type="button"
              onClick={() => download('electrode-log.csv', logCsv(log, zone), 'text/csv')}
            >
              As a table (CSV)
            </button>
            {log.holders.length > 0 && example}
          </p>
        </section>
        <section aria-labelledby="log-sheet-title">
          <h2 id="log-sheet-title" class="screen-only">
            Log sheet
          </h2>
          <p class="plan-actions screen-only">
            <button type="button" onClick={() => print()}>
              Print the sheet
            </button>
            <label class="log-back">
              Rows of{' '}
              <select
                value={back}
                onChange={(event) => this.setState({ back: event.currentTarget.value })}
              >
                <option value="24">the last 24 hours</option>
                <option value="168">the last 7 days</option>
                <option value="">the whole log</option>
                <option value="none">none: a blank sheet</option>
              </select>
            </label>
          </p>
          {back === 'none' || log.holders.length === 0 ? (
            <LogSheet />
          ) : (
            <LogSheet sheet={logSheet(log, from, at, zone)} />
          )}
        </section>
      </>
    );
  }

  /** The example stands on its own evening, so the moment goes there too. */
  showDemo = () => {
    const { log, moment } = demoLog(this.props.demo, this.device);
    this.example = log;
    this.put(log, 'An example evening. Undo brings your own log back.');
    this.setState({ chosen: typedWhen(moment, this.device) });
  };
}
