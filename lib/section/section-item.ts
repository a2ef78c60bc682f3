/**
 * One reading of an etched section against one limit. It passes when all that it may truly be meets the
 * limit, fails when none of it does, and is too close to tell between.
 */
import type { Citation, Printed } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import { printStated } from '../text/quantity-text.ts';
import { convert, type System } from '../units.ts';
import type { Measured } from './measured.ts';
import { printMeasured } from './measured-text.ts';

export type SectionVerdict =
  | 'pass'
  | 'fail'
  | 'too close to tell'
  | 'not judged'
  | 'does not apply';

export interface SectionItem {
  item: string;
  verdict: SectionVerdict;
  reading: string;
  limit: string;
  cite: Citation;
}

/** What the eye saw; undefined where nobody looked. */
export type Seen = 'none seen' | 'seen' | undefined;

/** Stands where nothing was read. */
export const nothing = '–';
/** The last bits of a computed number are no finding. */
const slack = 1e-9;

/** A size that cannot be below zero: what is measured below is none. */
export const notBelowZero = ({ value, uncertainty }: Measured): Measured => ({
  value: Math.max(0, value),
  uncertainty: value < 0 ? Math.max(0, value + uncertainty) : uncertainty,
});

/** Against a printed figure, in the reader's system; nothing was read where `reading` is undefined. */
export function atMost(
  { system }: { system: System },
  item: string,
  reading: Measured | undefined,
  at: PrintedFigure,
  cite: Citation,
): SectionItem {
  const limit = convert(at[system], system === 'us' ? 'in' : 'mm', 'mm');
  return {
    item,
    verdict: reading ? judged(reading, limit, 'at most') : 'not judged',
    reading: reading ? text(reading, system) : nothing,
    limit: `at most ${size(at)}`,
    cite,
  };
}

/** What the eye looks for and may not find. */
export function never(item: string, found: Seen, cite: Citation): SectionItem {
  const verdict = found === undefined ? 'not judged' : found === 'seen' ? 'fail' : 'pass';
  return { item, verdict, reading: found ?? nothing, limit: 'none', cite };
}

/** Lengths in millimeters. */
export function judged(
  { value, uncertainty }: Measured,
  limit: number,
  way: 'at least' | 'at most',
): SectionVerdict {
  const sign = way === 'at least' ? 1 : -1;
  const over = sign * (value - limit);
  const close = slack * Math.max(1, Math.abs(limit));
  if (over - uncertainty >= -close) return 'pass';
  return over + uncertainty < -close ? 'fail' : 'too close to tell';
}

/** A length in millimeters, in the unit of a reader’s system. */
export const own = (mm: number, system: System) => convert(mm, 'mm', system === 'us' ? 'in' : 'mm');
/** A size that cannot be below none, and was measured below it, is none; there is no doubt to print. */
export const text = (reading: Measured, system: System): string =>
  reading.value === 0 && reading.uncertainty === 0 ? 'none' : printMeasured(reading, 'mm', system);
const plain = (inches: number) => printStated(inches, 'in').replace(/\s*in$/u, '');
/** A printed figure in a sentence: see `text/say.ts`. */
export const size = (pair: PrintedFigure) => `{${plain(pair.us)} in|${pair.metric} mm}`;
/** A typed size in a sentence, as it was typed. */
export const stated = ({ value, system }: Printed) =>
  system === 'us' ? `{${plain(value)} in}` : `{${value} mm}`;
