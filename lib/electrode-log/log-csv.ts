/** The whole log as a table, a row for each event. */
import { type Cell, writeCsv } from '../csv.ts';
import { type ElectrodeLog, instantOf } from '../files/electrode-log.ts';
import { eventWords } from './event-words.ts';
import { type RowTold, rowsTold } from './rows-told.ts';
import { wallTime } from './wall-time.ts';

const columns = [
  'holder',
  'classification',
  'designator',
  'diameter',
  'day',
  'time',
  'time zone',
  'instant (UTC)',
  'event',
  'oven temperature',
  'unit',
  'hours',
  'hours on the clock after',
  'state after',
  'by',
] as const;

/** RFC 4180 text; `zone` is the one in which days and times are written. */
export function logCsv({ holders }: ElectrodeLog, zone: string): string {
  const rows = holders.flatMap((holder): Cell[][] => {
    const told = rowsTold(holder, zone);
    return holder.rows.map((row, place) => {
      const { day, time } = wallTime(instantOf(row.at), zone);
      const { hoursOut, state, problem } = told[place] as RowTold;
      return [
        holder.name,
        holder.classification,
        holder.designator === 'none' ? '' : holder.designator,
        holder.diameter,
        day,
        time,
        zone,
        row.at,
        eventWords[row.event],
        row.temperature?.value,
        row.temperature && (row.temperature.unit === 'degF' ? '°F' : '°C'),
        row.hours,
        hoursOut === undefined ? undefined : Math.round(hoursOut * 100) / 100,
        state ?? problem,
        row.by,
      ];
    });
  });
  return writeCsv(columns, rows);
}
