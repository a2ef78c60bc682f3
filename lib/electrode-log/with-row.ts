/** A row put into a holder's log at its place in time, or the reason why it cannot stand there. */
import { ExposureLog } from '../exposure/exposure-log.ts';
import { refuseOvenAdvice } from '../exposure/low-hydrogen-only.ts';
import { type Holder, type HolderRow, instantOf } from '../files/electrode-log.ts';
import { NoAnswer } from '../no-answer.ts';
import { exposureOf } from '../tables/exposure-d1.1.ts';
import { logClock } from './holder-at.ts';

export type WithRow =
  | { ok: true; holder: Holder; place: number }
  | { ok: false; field: 'event' | 'time' | 'temperature' | 'hours'; problem: string };

/** Rows of the same minute keep the order in which they were written. */
export function withRow(holder: Holder, row: HolderRow, zone: string): WithRow {
  const at = instantOf(row.at);
  const before = holder.rows.filter((it) => instantOf(it.at) <= at);
  const rows = [...before, row, ...holder.rows.slice(before.length)];
  const place = before.length;
  const oven = ovenRefusal(holder);
  if (oven !== undefined)
    return row.event === 'in oven' || row.event === 'rebaked'
      ? { ok: false, field: 'event', problem: oven }
      : { ok: true, holder: { ...holder, rows }, place };
  const broken = firstBroken(holder, rows, zone, at);
  if (broken === undefined || firstBroken(holder, holder.rows, zone, at) !== undefined)
    return { ok: true, holder: { ...holder, rows }, place };
  if (broken.place === place) return { ok: false, field: broken.field, problem: broken.problem };
  return {
    ok: false,
    field: 'time',
    problem: `Row ${broken.place + 1} of the log could not follow this one: ${broken.problem}`,
  };
}

/** Why no oven may hold this electrode and nothing is counted, if that is so. */
export function ovenRefusal({ classification, designator }: Holder): string | undefined {
  try {
    refuseOvenAdvice(classification, designator);
    return undefined;
  } catch (thrown) {
    if (thrown instanceof NoAnswer) return thrown.message;
    throw thrown;
  }
}

interface Broken {
  place: number;
  field: 'event' | 'time' | 'temperature' | 'hours';
  problem: string;
}

/** The first row that cannot follow the one above it. */
function firstBroken(
  { classification, designator }: Holder,
  rows: readonly HolderRow[],
  zone: string,
  near: number,
): Broken | undefined {
  const { events, told } = logClock(rows, zone, near);
  const log = new ExposureLog(exposureOf(classification, designator).hours, told);
  for (const [place, event] of events.entries()) {
    try {
      log.add(event, place + 1);
    } catch (thrown) {
      if (!(thrown instanceof NoAnswer)) throw thrown;
      const name = String(thrown.field).split('.').at(-1) as
        | 'at'
        | 'event'
        | 'temperature'
        | 'hours';
      return { place, field: name === 'at' ? 'time' : name, problem: thrown.message };
    }
  }
  return undefined;
}
