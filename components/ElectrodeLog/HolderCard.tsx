import { Component, createRef } from 'preact';
import { electrodeText, eventWords } from '../../lib/electrode-log/event-words.ts';
import type { Counted, NotCounted } from '../../lib/electrode-log/holder-at.ts';
import { wallTime } from '../../lib/electrode-log/wall-time.ts';
import { withRow } from '../../lib/electrode-log/with-row.ts';
import {
  type HeldEvent,
  type Holder,
  type HolderRow,
  instantText,
} from '../../lib/files/electrode-log.ts';
import type { System } from '../../lib/units.ts';
import HolderFacts from './HolderFacts.tsx';
import HolderState from './HolderState.tsx';
import RowForm from './RowForm.tsx';
import RowList from './RowList.tsx';
import type TimeLine from './TimeLine.tsx';

interface Props {
  place: number;
  holder: Holder;
  /** Names of all holders; the same list until one of them changes. */
  names: readonly string[];
  /** Its state at the moment asked about. */
  found: Counted | NotCounted;
  zone: string;
  system: System;
  now: number;
  /** The moment asked about; undefined while that is now. */
  chosen: number | undefined;
  /** The oven's reading for the one-tap return: as read, or as it was last typed. */
  oven: string;
  by: string;
  /** Reads the oven, or says by its field why it cannot. */
  readOven(): HolderRow['temperature'];
  onHolder(place: number, holder: Holder | undefined, said: string): void;
}

interface State {
  open: boolean;
  changing: number | undefined;
  asking: boolean;
  refused: string;
  /** The drawing, which is fetched when a log is opened. */
  Line: typeof TimeLine | undefined;
}

/** One can, quiver or other holder: its state, two buttons for tonight, and its log behind a third. */
export default class HolderCard extends Component<Props, State> {
  override state: State = {
    open: false,
    changing: undefined,
    asking: false,
    refused: '',
    Line: undefined,
  };
  private title = createRef<HTMLHeadingElement>();

  /** Thirty holders stand on a page, and one of them changes at a time. */
  override shouldComponentUpdate(next: Props, state: State) {
    const watched = [
      'place',
      'holder',
      'found',
      'names',
      'zone',
      'system',
      'now',
      'chosen',
      'oven',
      'by',
    ] as const;
    return state !== this.state || watched.some((name) => next[name] !== this.props[name]);
  }

  put = (holder: Holder | undefined, said: string) => {
    this.setState({ changing: undefined, asking: false, refused: '' });
    this.props.onHolder(this.props.place, holder, said);
  };

  /** What just happened, in one press. */
  tap = (event: HeldEvent) => {
    const { holder, zone, now, by, readOven } = this.props;
    const temperature = event === 'in oven' ? readOven() : undefined;
    if (event === 'in oven' && !temperature) return;
    const row: HolderRow = { event, at: instantText(now), by, ...(temperature && { temperature }) };
    const next = withRow(holder, row, zone);
    if (next.ok) {
      this.put(next.holder, `${holder.name}: ${eventWords[event]}, now.`);
      this.title.current?.focus({ preventScroll: true });
    } else this.setState({ refused: next.problem });
  };

  override render() {
    const { place, holder, found, zone, now, chosen, system, oven, by } = this.props;
    const { open, changing, refused, Line } = this.state;
    const at = chosen ?? now;
    const id = `log-${place + 1}`;
    return (
      <li id={id}>
        <h4 tabIndex={-1} ref={this.title} id={`${id}-title`}>
          {holder.name}
        </h4>
        <p class="quiet log-electrode">{electrodeText(holder)}</p>
        <HolderState found={found} zone={zone} day={wallTime(at, zone).day} />
        <p class="plan-actions">
          {chosen === undefined && this.taps(found)}
          <button type="button" aria-expanded={open} onClick={this.turn}>
            {open ? 'Close the log' : 'Open the log'}
            <span class="unseen"> of {holder.name}</span>
          </button>
        </p>
        <p class="problem" role="status">
          {refused && `${refused}.`}
        </p>
        {open && (
          <div class="log-open">
            <RowForm
              key={changing ?? 'new'}
              id={`${id}-row`}
              holder={holder}
              place={changing}
              zone={zone}
              system={system}
              now={now}
              oven={oven}
              by={by}
              onHolder={this.put}
              {...(changing !== undefined && {
                onCancel: () => this.setState({ changing: undefined }),
              })}
            />
            <RowList
              holder={holder}
              zone={zone}
              at={at}
              onChange={(row) => this.setState({ changing: row })}
              onRemove={(row) =>
                this.put(
                  { ...holder, rows: holder.rows.filter((_, it) => it !== row) },
                  `${holder.name}: row ${row + 1} is taken out. Undo brings it back.`,
                )
              }
            />
            {found.counted && Line && <Line holder={holder} found={found} at={at} zone={zone} />}
            <HolderFacts
              id={id}
              holder={holder}
              taken={this.props.names.filter((name) => name !== holder.name)}
              onHolder={(next) => this.put(next, '')}
            />
            <p>
              <button type="button" onClick={this.remove}>
                {this.state.asking
                  ? `Yes, take ${holder.name} out with its ${holder.rows.length} rows`
                  : `Take ${holder.name} out`}
              </button>
            </p>
          </div>
        )}
      </li>
    );
  }

  turn = () => {
    this.setState({ open: !this.state.open, changing: undefined, asking: false });
    // Where it cannot be fetched the log goes without its drawing.
    import('./TimeLine.tsx').then(
      ({ default: Line }) => this.setState({ Line }),
      () => undefined,
    );
  };

  remove = () => {
    const { name } = this.props.holder;
    if (this.state.asking) this.put(undefined, `${name} is taken out. Undo brings it back.`);
    else this.setState({ asking: true });
  };

  /** Both stay in their places, so that a second press of a glove hits nothing else. */
  private taps(found: Counted | NotCounted) {
    const { holder } = this.props;
    if (!found.counted) return null;
    const { state } = found;
    const tap = (event: HeldEvent, words: string, fits: boolean) => (
      <button type="button" disabled={!fits} onClick={() => this.tap(event)}>
        {words}
        <span class="unseen">: {holder.name}</span>
      </button>
    );
    return (
      <>
        {holder.rows.length === 0 && tap('opened', 'Opened now', true)}
        {tap('out', 'Issued now', state === 'sealed' || state.startsWith('in the oven'))}
        {tap('in oven', 'Returned now', state === 'out, within its time')}
        {state === 'out too long' && tap('tagged', 'Tagged now', true)}
      </>
    );
  }
}
