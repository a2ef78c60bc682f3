/**
 * One item of a visual check: one reading or one look at the weld, against one limit. What was not
 * read cannot be judged.
 */
import type { Citation, Printed } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import { printReading } from '../text/print-reading.ts';
import { printStated } from '../text/quantity-text.ts';
import type { System } from '../units.ts';
import type { Reading, YesNo } from './gauge-readings.ts';

export type Verdict = 'pass' | 'fail' | 'cannot be judged from this';

export interface Item {
  item: string;
  verdict: Verdict;
  reading: string;
  limit: string;
  cite: Citation;
}

/** A limit is met within this share of it: the last bits of a number are no finding. */
const slack = 1e-9;
/** At most the limit. */
export const isWithin = (value: number, limit: number): boolean => value <= limit * (1 + slack);
/** At least the limit. */
export const reaches = (value: number, limit: number): boolean => value >= limit * (1 - slack);

/**
 * A size as its gauge reads it, such as `1/32 in`; beside a limit with as many figures as show on
 * which side of it the size lies.
 */
export const printSize = (value: number, system: System, limit?: PrintedFigure): string => {
  const unit = system === 'us' ? 'in' : 'mm';
  const text = limit ? printReading(value, unit, limit[system]) : printStated(value, unit);
  return text.replace('\u00a0', ' ');
};

/** A limit in a sentence, as it is printed in each system: see `text/say.ts`. */
export const saidLimit = ({ us, metric }: PrintedFigure): string =>
  `{${printStated(us, 'in').replace(/\s*in$/u, '')} in|${metric} mm}`;

/** An item that nobody read. */
export const unread = (item: string, limit: string, cite: Citation): Item => ({
  item,
  verdict: 'cannot be judged from this',
  reading: 'not read',
  limit,
  cite,
});

/** A reading that may be no larger than the figure printed in its own system. */
export function atMost(
  item: string,
  reading: Reading,
  largest: PrintedFigure,
  cite: Citation,
  limit = `at most ${saidLimit(largest)}`,
): Item {
  if (!reading) return unread(item, limit, cite);
  const verdict = isWithin(reading.value, largest[reading.system]) ? 'pass' : 'fail';
  return { item, verdict, reading: printSize(reading.value, reading.system, largest), limit, cite };
}

/** What the eye finds or does not find; `wanted` is the answer that passes. */
export function byEye(
  item: string,
  found: YesNo,
  cite: Citation,
  wanted: 'yes' | 'no' = 'no',
  limit = 'none',
): Item {
  if (!found) return unread(item, limit, cite);
  return { item, verdict: found === wanted ? 'pass' : 'fail', reading: found, limit, cite };
}

/** The first row that reaches to a thickness or size; the last one for anything larger. */
export const rowOf = <T extends { upTo: PrintedFigure }>(rows: readonly T[], by: Printed): T =>
  (rows.find((row) => isWithin(by.value, row.upTo[by.system])) ?? rows.at(-1)) as T;

/** The smaller of a printed size and a share of the thickness, in both systems. */
export const orShareOf = (
  largest: PrintedFigure,
  share: number,
  thickness: Printed,
): PrintedFigure => ({
  us: Math.min(largest.us, share * inSystem(thickness, 'us')),
  metric: Math.min(largest.metric, share * inSystem(thickness, 'metric')),
});

/** A reading in one system; a gauge and a drawing may be in different ones. */
export const inSystem = ({ value, system }: Printed, wanted: System): number =>
  system === wanted ? value : wanted === 'us' ? value / 25.4 : value * 25.4;
