/** What the printed sheet says: every holder at a moment, and the rows that led there. */

import { type ElectrodeLog, instantOf } from '../files/electrode-log.ts';
import { durationText } from '../text/clock-text.ts';
import { electrodeText, eventWords, ovenText } from './event-words.ts';
import { holderAt } from './holder-at.ts';
import { type RowTold, rowsTold } from './rows-told.ts';
import { wallTime } from './wall-time.ts';
import { clockWords, whenWords } from './when-text.ts';

export interface SheetHolder {
  name: string;
  electrode: string;
  /** Longest time in open air. */
  limit: string;
  state: string;
  /** The time by which something must happen, with what. */
  until: string;
  /** Rows that stand before the sheet begins. */
  earlier: number;
}

export interface SheetRow {
  day: string;
  time: string;
  holder: string;
  event: string;
  oven: string;
  hours: string;
  /** What the clock showed after the row. */
  clock: string;
  by: string;
}

export interface LogSheet {
  /** The moment that the sheet tells of. */
  day: string;
  time: string;
  zone: string;
  holders: SheetHolder[];
  rows: SheetRow[];
}

/** Rows after `from`, up to `at`; both are instants. */
export function logSheet(log: ElectrodeLog, from: number, at: number, zone: string): LogSheet {
  const { day } = wallTime(at, zone);
  const holders = log.holders.map((holder): SheetHolder => {
    const found = holderAt(holder, at, zone);
    const earlier = holder.rows.filter((row) => instantOf(row.at) <= from).length;
    const about = { name: holder.name, electrode: electrodeText(holder), earlier };
    if (!found.counted)
      return {
        ...about,
        limit: '–',
        state:
          found.row === undefined
            ? (found.marked ?? 'not counted')
            : `row ${found.row + 1} cannot stand`,
        until: '',
      };
    const { backBy, readyFrom, bakedAt, limit, state } = found;
    const words = (instant: number) => whenWords(instant, zone, day);
    const until =
      backBy !== undefined
        ? `back by ${words(backBy)}`
        : readyFrom !== undefined
          ? `ready at ${words(readyFrom)}`
          : bakedAt !== undefined
            ? `until ${words(bakedAt)}`
            : '';
    return { ...about, limit: durationText(limit), state, until };
  });
  const rows = log.holders
    .flatMap((holder) =>
      holder.rows.flatMap((row, place) => {
        const instant = instantOf(row.at);
        if (instant <= from || instant > at) return [];
        return [
          { instant, holder: holder.name, row, told: rowsTold(holder, zone)[place] as RowTold },
        ];
      }),
    )
    .sort((a, b) => a.instant - b.instant)
    .map(({ instant, holder, row, told }): SheetRow => {
      const { hoursOut } = told;
      return {
        day: wallTime(instant, zone).day,
        time: clockWords(instant, zone),
        holder,
        event: eventWords[row.event],
        oven: ovenText(row),
        hours: row.hours === undefined ? '' : durationText(row.hours),
        clock: hoursOut === undefined ? '' : durationText(hoursOut),
        by: row.by,
      };
    });
  return { day, time: clockWords(at, zone), zone, holders, rows };
}
