/**
 * The figure that a grading point is held to: the shop's own limit where there is one, else that of
 * the exercise. Where the shop asks for less than the source, that is said.
 */
import type { SheetPoint } from '../booth/exercise-sheet.ts';
import { printStated, readQuantity } from '../text/quantity-text.ts';
import { convert, type System, type Unit, unitFor } from '../units.ts';
import { limitSense, type Sense } from './limit-sense.ts';

export interface Bound {
  unit: Unit;
  value: number;
  text: string;
  /** A sentence about a limit of the shop that asks for less. */
  looser?: string;
}

/** The limit that counts, or why it cannot be read. `own` is empty where the shop has none. */
export function boundOf(
  point: SheetPoint,
  own: string,
  sense: Sense,
  system: System,
): Bound | { problem: string } {
  // A source that prints both systems has a figure for each; neither is converted.
  const printed = system === 'metric' && point.metric ? point.metric : (point.amount as string);
  const unit = unitIn(printed);
  const standard = readQuantity(printed, unit);
  if ('problem' in standard) return { problem: `The limit ${standard.problem}` };
  const text = `{${printed}}`;
  if (own.trim() === '') return { ...standard, text };
  const bare = unitFor(unit, system);
  const read = readQuantity(own, bare);
  if ('problem' in read) return { problem: `The shop’s own limit ${read.problem}` };
  const value = convert(read.value, read.unit, standard.unit);
  if (!(value >= 0)) return { problem: 'The shop’s own limit must not be negative' };
  const asksLess = sense === 'at least' ? value < standard.value : value > standard.value;
  const said = `{${printStated(read.value, read.unit).replace('\u00a0', ' ')}}`;
  return {
    unit: standard.unit,
    value,
    text: `${said} (the shop’s own limit)`,
    ...(asksLess && {
      looser: `The shop’s own limit ${said} is looser than ${text}${point.source ? ` of ${point.source}` : ', common practice'}`,
    }),
  };
}

/** What has to be said of a shop's own limit: that it cannot be read, or that it asks for less. */
export function ownLimitSaid(point: SheetPoint, own: string, system: System): string | undefined {
  const sense = limitSense(point);
  if (!sense) return undefined;
  const bound = boundOf(point, own, sense, system);
  return 'problem' in bound ? bound.problem : bound.looser;
}

/** The unit at the end of a stated quantity. */
const unitIn = (text: string): Unit => (/\s(\S+)$/.exec(text)?.[1] ?? '1') as Unit;
