/** Each row of a holder's log with what it did: the clock and the state right after it. */
import { ExposureLog, type exposureStates } from '../exposure/exposure-log.ts';
import { type Holder, instantOf } from '../files/electrode-log.ts';
import { NoAnswer } from '../no-answer.ts';
import { exposureOf } from '../tables/exposure-d1.1.ts';
import { logClock } from './holder-at.ts';
import { remembered } from './remembered.ts';
import { ovenRefusal } from './with-row.ts';

export interface RowTold {
  /** Hours on the clock after the row; undefined where nothing is counted. */
  hoursOut?: number;
  state?: (typeof exposureStates)[number];
  /** Why the row cannot follow the one above it. */
  problem?: string;
}

/** One for each row, in order, in one pass; after a row that cannot stand nothing is counted. */
export const rowsTold = remembered((holder: Holder, zone: string): RowTold[] => {
  const { classification, designator, rows } = holder;
  if (ovenRefusal(holder) !== undefined) return rows.map(() => ({}));
  const last = rows.at(-1);
  const { events, told } = logClock(rows, zone, last ? instantOf(last.at) : 0);
  const log = new ExposureLog(exposureOf(classification, designator).hours, told);
  let broken = false;
  return events.map((event, place): RowTold => {
    if (broken) return {};
    try {
      log.add(event, place + 1);
      return { hoursOut: log.clock.hoursOut, state: log.state };
    } catch (thrown) {
      if (!(thrown instanceof NoAnswer)) throw thrown;
      broken = true;
      return { problem: thrown.message };
    }
  });
});
