/**
 * From what people type to values in the declared units of a calculation's inputs. Nothing is
 * guessed or rounded: what cannot be read, is missing or lies outside its limits is told by its field.
 */
import type {
  Bounds,
  ChoiceInput,
  Input,
  Inputs,
  ListInput,
  Printed,
  PrintedInput,
  QuantityInput,
  Reason,
} from './calculation.ts';
import { readDay } from './text/day-text.ts';
import { printFraction, ruleOf } from './text/inches.ts';
import { readQuantity } from './text/quantity-text.ts';
import { quoted } from './text/quoted.ts';
import { convert, type System, type Unit, unitFor, unitOf } from './units.ts';

export type TypedValue = string | number | readonly Readonly<Record<string, string | number>>[];
export type Typed = Readonly<Record<string, TypedValue | undefined>>;

export interface Problem {
  /** The input's name; rows of a list as `pieces.2.length`. Empty when no one field is at fault. */
  field: string;
  text: string;
}

/** A value as given: what was typed, and the same in the declared unit. */
export interface Given {
  text: string;
  value?: number;
  unit?: Unit;
  system?: System;
}

/** By the input's name; rows of a list as values of each row. */
export type AllGiven = Record<string, Given | Record<string, Given>[]>;

/** `bare` says in which unit a number without one stands: the declared one, or a reader's own. */
export type Bare = 'declared' | System;

/** More rows than any list of a course has; a longer one is a mistake, and would take long to compute. */
const maxRows = 1000;

/** What was typed, in the declared units, and what has to be said of it. */
export interface ReadInputs {
  values: Record<string, unknown>;
  given: AllGiven;
  /** Why there is no answer: phrases that start with the field's name. */
  problems: Problem[];
  /** What is unusual, and is answered all the same. */
  cautions: Reason[];
}

/** Everything that was typed for a calculation, by the name of its input. */
export function readInputs(inputs: Inputs, typed: Typed, bare: Bare): ReadInputs {
  const found: Found = { bare, problems: [], cautions: [] };
  refuseStrangers(found, inputs, typed, '', 'an input');
  return { ...found, ...readAll(found, inputs, typed, '') };
}

/** What is found while reading; every function below adds to it. */
type Found = Pick<ReadInputs, 'problems' | 'cautions'> & { bare: Bare };

function refuse({ problems }: Found, field: string, text: string): undefined {
  problems.push({ field, text });
}

/** Names that are none of these inputs are told, never dropped in silence. */
function refuseStrangers(found: Found, inputs: Inputs, typed: Typed, path: string, what: string) {
  for (const name of Object.keys(typed))
    if (!Object.hasOwn(inputs, name))
      refuse(
        found,
        path + name,
        `${quoted(name, 40)} is not ${what} here; there are ${Object.keys(inputs).join(', ')}`,
      );
}

/** `path` stands before the names of a list's columns: `pieces.2.`. */
function readAll(found: Found, inputs: Inputs, typed: Typed, path: string) {
  const values: Record<string, unknown> = {};
  const given: AllGiven = {};
  for (const [name, input] of Object.entries(inputs)) {
    const got = readOne(found, input, typed[name], path + name);
    values[name] = got?.value;
    if (got?.given) given[name] = got.given as Given;
  }
  return { values, given };
}

function readOne(found: Found, input: Input, typed: TypedValue | undefined, field: string) {
  const { label } = input;
  if ('list' in input) return readList(found, input, typed, field);
  const standard = 'default' in input ? input.default : undefined;
  const text = typed ?? standard ?? '';
  if (text === '') return input.optional ? undefined : refuse(found, field, `${label} is missing`);
  if (typeof text !== 'string' && typeof text !== 'number')
    return refuse(found, field, `${label} needs one value`);
  if ('choices' in input) return readChoice(found, input, String(text), field);
  if ('date' in input) {
    const read = readDay(String(text));
    if ('problem' in read) return refuse(found, field, `${label} ${read.problem}`);
    return { value: read.day, given: { text: read.day } };
  }
  return readSize(found, input, String(text), field);
}

function readChoice(found: Found, { label, choices }: ChoiceInput, text: string, field: string) {
  const wanted = text.trim().toLowerCase();
  const value = choices.find((choice) => choice.toLowerCase() === wanted);
  if (value !== undefined) return { value, given: { text: value } };
  const shown = choices.slice(0, 30).join(', ');
  return refuse(found, field, `${label} ${quoted(text)} is not known here; there are ${shown}`);
}

function readSize(found: Found, input: QuantityInput | PrintedInput, text: string, field: string) {
  const { label, limits } = input;
  const declared = 'printed' in input ? input.printed.us : input.unit;
  const reading = readQuantity(
    text,
    found.bare === 'declared' ? declared : unitFor(declared, found.bare),
  );
  if ('problem' in reading) return refuse(found, field, `${label} ${reading.problem}`);
  const value = inUnit(reading, declared);
  if ('whole' in input && input.whole && !Number.isInteger(value))
    return refuse(found, field, `${label} needs a whole number`);
  const outside = beyond(value, limits, declared);
  if (outside) return refuse(found, field, `${label} ${outside}: ${limits.why}`);
  if ('usual' in input && input.usual) cautionUnusual(found, label, value, input.usual, declared);
  const system = unitOf(reading.unit).system ?? 'us';
  const given: Given = { text, ...reading, system };
  if (!('printed' in input)) return { value, given };
  const printed: Printed = { value: inUnit(reading, input.printed[system]), system };
  return { value: printed, given };
}

function cautionUnusual(
  { cautions }: Found,
  label: string,
  value: number,
  usual: Bounds,
  declared: Unit,
): void {
  const unusual = beyond(value, usual, declared);
  if (unusual)
    cautions.push({
      kind: 'caution',
      text: `${label} ${unusual.replace('must be', 'is usually')}: ${usual.why}`,
      ...(usual.cite && { cite: usual.cite }),
    });
}

function readList(
  found: Found,
  { list, label, optional }: ListInput,
  typed: TypedValue | undefined,
  field: string,
) {
  if (typed === undefined)
    return optional ? undefined : refuse(found, field, `${label}: nothing is listed`);
  if (!Array.isArray(typed) || typed.some((row) => typeof row !== 'object' || row === null))
    return refuse(found, field, `${label} needs a list of rows`);
  if (typed.length > maxRows)
    return refuse(found, field, `${label} holds more than ${maxRows} rows`);
  const rows = typed.map((row, index) => {
    const path = `${field}.${index + 1}.`;
    refuseStrangers(found, list, row, path, 'a column');
    return readAll(found, list, row, path);
  });
  return {
    value: rows.map(({ values }) => values),
    given: rows.map(({ given }) => given),
  };
}

/** Without the last bits that a conversion leaves: 304.8 mm is 12 in, not 12.000000000000002. */
const inUnit = ({ value, unit }: { value: number; unit: Unit }, to: Unit): number =>
  unit === to ? value : Number(convert(value, unit, to).toPrecision(14));

/** What a value must be and is not, after the name of its field; undefined where it lies within. */
function beyond(value: number, { min, max }: Bounds, unit: Unit): string | undefined {
  if (min !== undefined && value < min) return `must be at least {${written(min, unit)} ${unit}}`;
  if (max !== undefined && value > max) return `must be at most {${written(max, unit)} ${unit}}`;
  return undefined;
}

/** A bound as `say.ts` reads it: inches as a fraction where they are one. */
function written(bound: number, unit: Unit): string {
  const rule = unit === 'in' ? ruleOf(bound) : undefined;
  return rule === undefined ? String(bound) : printFraction(bound, rule);
}
