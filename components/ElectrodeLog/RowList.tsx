import { Component } from 'preact';
import { eventWords, ovenText } from '../../lib/electrode-log/event-words.ts';
import { rowsTold } from '../../lib/electrode-log/rows-told.ts';
import { wallTime } from '../../lib/electrode-log/wall-time.ts';
import { clockWords } from '../../lib/electrode-log/when-text.ts';
import { type Holder, instantOf } from '../../lib/files/electrode-log.ts';
import { durationText } from '../../lib/text/clock-text.ts';

interface Props {
  holder: Holder;
  zone: string;
  /** Later rows do not count yet. */
  at: number;
  onChange(place: number): void;
  onRemove(place: number): void;
}

/** An evening brings a handful; the rest of a long log comes when it is asked for. */
const few = 12;

/** The rows of one holder, the newest first. */
export default class RowList extends Component<Props, { all: boolean }> {
  override state = { all: false };

  override render() {
    const { holder, zone, at, onChange, onRemove } = this.props;
    const { rows, name } = holder;
    if (rows.length === 0) return null;
    const told = rowsTold(holder, zone);
    const shown = rows.map((row, place) => ({ row, place })).reverse();
    const newest = this.state.all ? shown : shown.slice(0, few);
    return (
      <>
        <h4>Rows, the newest first</h4>
        <ol class="log-rows" reversed start={rows.length}>
          {newest.map(({ row, place }) => {
            const instant = instantOf(row.at);
            const when = `${wallTime(instant, zone).day}, ${clockWords(instant, zone)}`;
            const { hoursOut, state, problem } = told[place] ?? {};
            return (
              <li key={place}>
                <span>
                  <b>{place + 1}</b> {when}: {eventWords[row.event]}
                  {row.temperature && ` at ${ovenText(row)}`}
                  {row.hours !== undefined && ` for ${durationText(row.hours)}`}
                  {row.by && ` (${row.by})`}
                  {hoursOut !== undefined && (
                    <small>
                      {' '}
                      {state}, {durationText(hoursOut)} on the clock
                    </small>
                  )}
                  {instant > at && <small> not counted at the moment asked about</small>}
                  {problem && <span class="problem">{problem}.</span>}
                </span>
                <span class="log-row-buttons">
                  <button
                    type="button"
                    aria-label={`Change row ${place + 1} of ${name}`}
                    onClick={() => onChange(place)}
                  >
                    Change
                  </button>
                  <button
                    type="button"
                    aria-label={`Take out row ${place + 1} of ${name}`}
                    onClick={() => onRemove(place)}
                  >
                    ✕
                  </button>
                </span>
              </li>
            );
          })}
        </ol>
        {newest.length < rows.length && (
          <button type="button" onClick={() => this.setState({ all: true })}>
            Show all {rows.length} rows
          </button>
        )}
      </>
    );
  }
}
