import { Component } from 'preact';
import { addDays } from '../../lib/calendar.ts';
import { eventWords, ovenText } from '../../lib/electrode-log/event-words.ts';
import {
  needsOven,
  type ReadRow,
  readRow,
  type TypedRow,
} from '../../lib/electrode-log/read-row.ts';
import { typedWhen } from '../../lib/electrode-log/read-when.ts';
import { withRow } from '../../lib/electrode-log/with-row.ts';
import {
  type HeldEvent,
  type Holder,
  heldEvents,
  instantOf,
} from '../../lib/files/electrode-log.ts';
import type { System } from '../../lib/units.ts';
import TypedBox from '../ClassPlan/TypedBox.tsx';
import WhenBoxes from './WhenBoxes.tsx';

interface Props {
  id: string;
  holder: Holder;
  /** Place of the row that is changed; a new one is written where there is none. */
  place?: number | undefined;
  zone: string;
  system: System;
  now: number;
  /** What the oven was last seen to read, and who wrote the last row. */
  oven: string;
  by: string;
  onHolder(holder: Holder, said: string): void;
  onCancel?(): void;
}

interface State {
  /** What was typed; the rest stands as it was offered. */
  typed: Partial<TypedRow>;
  refused: Extract<ReadRow, { ok: false }> | undefined;
}

/** One event with its day and time: written down, or put right. */
export default class RowForm extends Component<Props, State> {
  override state: State = { typed: {}, refused: undefined };

  /** Day and time follow the clock until somebody types. */
  offered(): TypedRow {
    const { holder, place, zone, now, oven, by } = this.props;
    const row = place === undefined ? undefined : holder.rows[place];
    return {
      ...typedWhen(row ? instantOf(row.at) : now, zone),
      event: row?.event ?? (holder.rows.length === 0 ? 'opened' : 'out'),
      temperature: row?.temperature ? ovenText(row) : oven,
      hours: row?.hours === undefined ? '2' : String(Math.round(row.hours * 1000) / 1000),
      by: row?.by ?? by,
    };
  }

  type = (part: Partial<TypedRow>) =>
    this.setState({ typed: { ...this.state.typed, ...part }, refused: undefined });

  write = (typed: TypedRow) => {
    const { holder, place, zone, system, now, onHolder } = this.props;
    const read = readRow(typed, zone, system, now);
    if (!read.ok) {
      this.setState({ refused: read });
      return;
    }
    const others = { ...holder, rows: holder.rows.filter((_, at) => at !== place) };
    const next = withRow(others, read.row, zone);
    if (!next.ok) {
      this.setState({ refused: { ...next, problem: begun(next.field, next.problem) } });
      return;
    }
    this.setState({ typed: { by: typed.by }, refused: undefined });
    onHolder(next.holder, `${holder.name}: ${eventWords[read.row.event]} is written down.`);
  };

  override render() {
    const { id, zone, system, now, place, onCancel } = this.props;
    const { refused } = this.state;
    const typed: TypedRow = { ...this.offered(), ...this.state.typed };
    const live = readRow(typed, zone, system, now);
    const problem = (field: string) => (refused?.field === field ? refused.problem : undefined);
    return (
      <form
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          this.write(typed);
        }}
      >
        <div class="plan-boxes">
          <div class="plan-box">
            <label for={`${id}-event`}>What happened</label>
            <select
              id={`${id}-event`}
              value={typed.event}
              aria-invalid={problem('event') !== undefined}
              aria-describedby={`${id}-event-problem`}
              onChange={(event) => this.type({ event: event.currentTarget.value as HeldEvent })}
            >
              {heldEvents.map((event) => (
                <option key={event} value={event} selected={event === typed.event}>
                  {eventWords[event]}
                </option>
              ))}
            </select>
            <p class="problem" id={`${id}-event-problem`} role="status">
              {problem('event') && `${problem('event')}.`}
            </p>
          </div>
          <WhenBoxes
            id={id}
            value={typed}
            twice={live.twice}
            problem={refused && { field: refused.field, text: refused.problem }}
            onWhen={({ day, time, which = '' }) => this.type({ day, time, which })}
          />
          {needsOven(typed.event) && (
            <TypedBox
              id={`${id}-temperature`}
              label="Oven temperature"
              value={typed.temperature}
              unit={system === 'us' ? '°F' : '°C'}
              hint="Its thermometer, not its dial."
              problem={problem('temperature')}
              onText={(temperature) => this.type({ temperature })}
            />
          )}
          {typed.event === 'rebaked' && (
            <TypedBox
              id={`${id}-hours`}
              label="Hours in the oven"
              value={typed.hours}
              hint="At that temperature, from the time above."
              problem={problem('hours')}
              onText={(hours) => this.type({ hours })}
            />
          )}
          <TypedBox
            id={`${id}-by`}
            label="By"
            value={typed.by}
            hint="Initials; may stay empty."
            onText={(by) => this.type({ by: by.slice(0, 40) })}
          />
        </div>
        <p class="plan-actions">
          <button type="submit">{place === undefined ? 'Write it down' : 'Put it right'}</button>
          {refused?.dayBefore && (
            <button
              type="button"
              onClick={() => this.write({ ...typed, day: addDays(typed.day, -1) })}
            >
              It was the day before
            </button>
          )}
          {onCancel && (
            <button type="button" onClick={onCancel}>
              Leave it as it is
            </button>
          )}
        </p>
      </form>
    );
  }
}

const names = {
  event: 'What happened',
  time: 'Time',
  temperature: 'Oven temperature',
  hours: 'Hours',
};

/** What the rules say about a row, begun with the name of its field. */
const begun = (field: keyof typeof names, problem: string): string => `${names[field]}: ${problem}`;
