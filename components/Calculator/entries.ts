/**
 * What a reader typed into a form. An entry remembers its text and the system it was typed in; the
 * units switch changes what a box shows and never the entry, so going back restores `1-1/2`.
 */
import type { Typed, TypedValue } from '../../lib/answer.ts';
import type { Input, Inputs } from '../../lib/calculation.ts';
import { printStated, readQuantity } from '../../lib/text/quantity-text.ts';
import { convert, type System, type Unit, unitFor, unitOf } from '../../lib/units.ts';

export type Row = Record<string, string>;
export type Entry = { text: string; system: System } | { rows: Row[] };
export type Entries = Record<string, Entry>;

export const declaredUnit = (input: Input): Unit | undefined =>
  'unit' in input ? input.unit : 'printed' in input ? input.printed.us : undefined;

/** The system of a declared unit: a number that the page or the source gives bare stands in it. */
const ownSystem = (input: Input): System => {
  const declared = declaredUnit(input);
  return (declared && unitOf(declared).system) ?? 'us';
};

/** The text that a box opens with: what the page gives, else a fixed value, else the example. */
export function opening(input: Input, given: TypedValue | undefined, system: System): string {
  if ('list' in input) return '';
  const fixed = given ?? ('default' in input ? input.default : undefined);
  if (typeof fixed === 'string' || typeof fixed === 'number')
    return boxText(input, String(fixed), ownSystem(input), system);
  if (input.optional) return '';
  const { example } = input;
  if (typeof example !== 'string') return example[system];
  return boxText(input, example, ownSystem(input), system);
}

/** The text of a box for a reader of `system`, from text typed by a reader of `typedIn`. */
export function boxText(input: Input, text: string, typedIn: System, system: System): string {
  const declared = declaredUnit(input);
  if (declared === undefined) return text;
  const to = unitFor(declared, system);
  const reading = readQuantity(text, unitFor(declared, typedIn));
  if ('problem' in reading) return text;
  if (reading.unit === to) return withoutUnit(text);
  return withoutUnit(printStated(convert(reading.value, reading.unit, to), to));
}

/** The number at the head of a quantity that could be read. */
const withoutUnit = (text: string): string =>
  /^[\s+\-−\d.,/½¼¾⅛⅜⅝⅞]+/.exec(text)?.[0].trim() ?? text;

/** The typed text with the unit that a bare number had where it was typed. */
function canonical(input: Input, { text, system }: { text: string; system: System }): string {
  const declared = declaredUnit(input);
  if (
    declared === undefined ||
    declared === '1' ||
    text.trim() === '' ||
    /[^\d\s+\-−.,/½¼¾⅛⅜⅝⅞]/.test(text)
  )
    return text;
  return `${text.trim()} ${unitFor(declared, system)}`;
}

/** What the edge receives for a reader of `system`. */
export function typedFor(inputs: Inputs, entries: Entries, given: Typed, system: System): Typed {
  return Object.fromEntries(
    Object.entries(inputs).map(([name, input]) => {
      const entry = entries[name];
      if (entry && 'rows' in entry) return [name, entry.rows];
      if (entry) return [name, canonical(input, entry)];
      if (given[name] !== undefined) return [name, given[name]];
      if ('list' in input) return [name, input.optional ? undefined : input.example];
      const text = opening(input, undefined, system);
      return [name, text === '' ? undefined : canonical(input, { text, system })];
    }),
  );
}

/** The part of the state that goes into the address. */
export const stateOf = (inputs: Inputs, entries: Entries): Record<string, string | Row[]> =>
  Object.fromEntries(
    Object.entries(entries).map(([name, entry]) => [
      name,
      'rows' in entry ? entry.rows : canonical(inputs[name] as Input, entry),
    ]),
  );

/** Entries from an address: a bare number there stands in the declared unit. */
export function entriesOf(inputs: Inputs, state: Record<string, string | Row[]>): Entries {
  return Object.fromEntries(
    Object.entries(state).map(([name, value]) => {
      if (typeof value !== 'string') return [name, { rows: value }];
      return [name, { text: value, system: ownSystem(inputs[name] as Input) }];
    }),
  );
}
