/**
 * From what people type to values in the declared units of a calculation's inputs. Nothing is
 * guessed or rounded: what cannot be read, is missing or lies outside its limits is told by its field.
 */
import type {
  Bounds,
  Input,
  Inputs,
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

/** Reads what was typed for one calculation, and collects what is wrong with it. */
export class TypedReader {
  /** Why there is no answer. */
  readonly problems: Problem[] = [];
  /** What is unusual and answered all the same. */
  readonly cautions: Reason[] = [];
  readonly bare: Bare;
  constructor(bare: Bare) {
    this.bare = bare;
  }

  private refuse(field: string, text: string): undefined {
    this.problems.push({ field, text });
    return undefined;
  }

  /** Names that are none of these inputs are told, never dropped in silence. */
  refuseUnknown(inputs: Inputs, names: readonly string[], path = '', what = 'an input'): void {
    for (const name of names)
      if (!Object.hasOwn(inputs, name))
        this.refuse(
          `${path}${name}`,
          `${quoted(name, 40)} is not ${what} here; there are ${Object.keys(inputs).join(', ')}`,
        );
  }

  /**
   * What was typed for these inputs, by name, in their declared units. `path` stands before the names of
   * a list's columns: `pieces.2.`.
   */
  readAll(inputs: Inputs, typed: Typed, path = '') {
    const values: Record<string, unknown> = {};
    const given: AllGiven = {};
    for (const [name, input] of Object.entries(inputs)) {
      const got = this.read(input, typed[name], `${path}${name}`);
      values[name] = got?.value;
      if (got?.given) given[name] = got.given as Given;
    }
    return { values, given };
  }

  private read(input: Input, typed: TypedValue | undefined, field: string) {
    if ('list' in input) return this.readList(input.list, typed, field, input);
    const text = typed ?? ('default' in input ? input.default : undefined);
    if (text === undefined || text === '') {
      if (input.optional) return undefined;
      return this.refuse(field, `${input.label} is missing`);
    }
    if (typeof text !== 'string' && typeof text !== 'number')
      return this.refuse(field, `${input.label} needs one value`);
    if ('choices' in input) return this.readChoice(input, String(text), field);
    if ('date' in input) {
      const day = readDay(String(text));
      if ('problem' in day) return this.refuse(field, `${input.label} ${day.problem}`);
      return { value: day.day, given: { text: day.day } };
    }
    return this.readSize(input, String(text), field);
  }

  private readChoice(
    input: { label: string; choices: readonly string[] },
    text: string,
    field: string,
  ) {
    const wanted = text.trim().toLowerCase();
    const value = input.choices.find((choice) => choice.toLowerCase() === wanted);
    if (value !== undefined) return { value, given: { text: value } };
    const shown = input.choices.slice(0, 30).join(', ');
    return this.refuse(
      field,
      `${input.label} ${quoted(text)} is not known here; there are ${shown}`,
    );
  }

  private readSize(input: QuantityInput | PrintedInput, text: string, field: string) {
    const declared = 'printed' in input ? input.printed.us : input.unit;
    const bare = this.bare === 'declared' ? declared : unitFor(declared, this.bare);
    const reading = readQuantity(text, bare);
    if ('problem' in reading) return this.refuse(field, `${input.label} ${reading.problem}`);
    const value = inUnit(reading, declared);
    if ('whole' in input && input.whole && !Number.isInteger(value))
      return this.refuse(field, `${input.label} needs a whole number`);
    const outside = beyond(value, input.limits, declared);
    if (outside) return this.refuse(field, `${input.label} ${outside}: ${input.limits.why}`);
    if ('usual' in input && input.usual)
      this.cautionUnusual(input.label, value, input.usual, declared);
    const system = unitOf(reading.unit).system ?? 'us';
    const given: Given = {
      text,
      value: reading.value,
      unit: reading.unit,
      system,
    };
    if (!('printed' in input)) return { value, given };
    const printed: Printed = {
      value: inUnit(reading, input.printed[system]),
      system,
    };
    return { value: printed, given };
  }

  private cautionUnusual(label: string, value: number, usual: Bounds, declared: Unit): void {
    const unusual = beyond(value, usual, declared);
    if (unusual)
      this.cautions.push({
        kind: 'caution',
        text: `${label} ${unusual.replace('must be', 'is usually')}: ${usual.why}`,
        ...(usual.cite && { cite: usual.cite }),
      });
  }

  private readList(
    fields: Inputs,
    typed: TypedValue | undefined,
    field: string,
    { label, optional }: { label: string; optional?: true },
  ) {
    if (typed === undefined) {
      if (optional) return undefined;
      return this.refuse(field, `${label}: nothing is listed`);
    }
    if (!Array.isArray(typed) || typed.some((row) => typeof row !== 'object' || row === null))
      return this.refuse(field, `${label} needs a list of rows`);
    if (typed.length > maxRows)
      return this.refuse(field, `${label} holds more than ${maxRows} rows`);
    const rows = typed.map((row, index) => {
      const at = `${field}.${index + 1}.`;
      this.refuseUnknown(fields, Object.keys(row), at, 'a column');
      return this.readAll(fields, row, at);
    });
    return {
      value: rows.map((row) => row.values),
      given: rows.map((row) => row.given),
    };
  }
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
