/** An invented evening, set on the wall clock of whoever looks at it. */
import { instantsOf } from '../../lib/electrode-log/wall-time.ts';
import { type ElectrodeLog, type Holder, instantText } from '../../lib/files/electrode-log.ts';

export interface DemoEvening {
  day: string;
  /** The time at which it is shown. */
  time: string;
  holders: (Omit<Holder, 'rows'> & {
    rows: (Omit<Holder['rows'][number], 'at' | 'by'> & { time: string })[];
  })[];
}

export function demoLog(
  { day, time, holders }: DemoEvening,
  zone: string,
): { log: ElectrodeLog; moment: number } {
  const at = (clock: string) => instantsOf({ day, time: clock }, zone)[0] ?? 0;
  return {
    moment: at(time),
    log: {
      zone,
      holders: holders.map(({ rows, ...holder }) => ({
        ...holder,
        rows: rows.map(({ time: clock, ...row }) => ({
          ...row,
          at: instantText(at(clock)),
          by: 'TL',
        })),
      })),
    },
  };
}
