/** One event as typed, as a row of the log. */
import { type HeldEvent, type HolderRow, instantText } from '../files/electrode-log.ts';
import { readQuantity } from '../text/quantity-text.ts';
import { convert, type System } from '../units.ts';
import { type Choice, readWhen, type TypedWhen } from './read-when.ts';
import { clockWords } from './when-text.ts';

export interface TypedRow extends TypedWhen {
  event: HeldEvent;
  temperature: string;
  hours: string;
  by: string;
}

export type RowField = 'event' | 'day' | 'time' | 'which' | 'temperature' | 'hours';

export type ReadRow =
  | { ok: true; row: HolderRow; twice?: readonly Choice[] }
  | {
      ok: false;
      field: RowField;
      problem: string;
      twice?: readonly Choice[];
      /** The time has not come on this day; on the day before it was. */
      dayBefore?: true;
    };

/** A clock on the wall and one in a phone differ by this much, in milliseconds. */
const slack = 2 * 60_000;
const dayLength = 86_400_000;
/** What any electrode oven may show, °F; as in the calculation of the exposure. */
const coldest = 32;
const hottest = 1500;

/** Whether an event asks for the oven’s temperature. */
export const needsOven = (event: HeldEvent): boolean => event === 'in oven' || event === 'rebaked';

/** `now` is an instant: what has not happened yet is not logged. */
export function readRow(typed: TypedRow, zone: string, system: System, now: number): ReadRow {
  const when = readWhen(typed, zone);
  if (!when.ok) return when;
  const twice = when.twice && { twice: when.twice };
  const refuse = (field: RowField, problem: string): ReadRow => ({
    ok: false,
    field,
    problem,
    ...twice,
  });
  if (when.at > now + slack)
    return {
      ok: false,
      field: 'time',
      problem: `Time ${clockWords(when.at, zone)} on ${typed.day} is still to come; the log takes what has happened`,
      ...twice,
      ...(when.at - dayLength <= now && { dayBefore: true }),
    };
  const row: HolderRow = { event: typed.event, at: instantText(when.at), by: typed.by.trim() };
  if (needsOven(typed.event)) {
    const read = readOven(typed.temperature, system);
    if ('problem' in read) return refuse('temperature', read.problem);
    row.temperature = read;
  }
  if (typed.event === 'rebaked') {
    const read = readQuantity(typed.hours, 'h');
    if ('problem' in read) return refuse('hours', `Hours in the oven ${read.problem}`);
    const hours = convert(read.value, read.unit, 'h');
    if (!(hours > 0 && hours <= 48))
      return refuse('hours', 'Hours in the oven must be more than 0 and at most 48');
    row.hours = Math.round(hours * 60) / 60;
  }
  return { ok: true, row, ...twice };
}

/** What the oven's thermometer shows; a bare number is in the reader's system. */
export function readOven(
  text: string,
  system: System,
): NonNullable<HolderRow['temperature']> | { problem: string } {
  const read = readQuantity(text, system === 'us' ? 'degF' : 'degC');
  if ('problem' in read) return { problem: `Oven temperature ${read.problem}` };
  const degF = convert(read.value, read.unit, 'degF');
  if (degF < coldest || degF > hottest)
    return {
      problem: `Oven temperature must be from {${coldest} degF} to {${hottest} degF}: no electrode oven is colder or hotter`,
    };
  return { value: read.value, unit: read.unit === 'degC' ? 'degC' : 'degF' };
}
