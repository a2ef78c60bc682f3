/**
 * The one edge between what people type and what is computed. Forms, lessons, the command line,
 * checks and tests all come through here: names, units and limits are looked at, values go to the
 * source's units, and the answer or the sentences that say why there is none come back.
 */
import type {
  Bounds,
  Calculation,
  Input,
  Inputs,
  Printed,
  PrintedInput,
  QuantityInput,
  Reason,
} from './calculation.ts';
import { NoAnswer } from './no-answer.ts';
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

export interface Answer {
  /** What `compute` received: numbers in the declared units. */
  values: Record<string, unknown>;
  given: Record<string, Given | Record<string, Given>[]>;
  results: Record<string, unknown>;
  because: Reason[];
}

export type Answered = ({ ok: true } & Answer) | { ok: false; problems: Problem[] };

/** `bare` says in which unit a number without one stands: the declared one, or a reader's own. */
export type Bare = 'declared' | System;

const maxRows = 1000;

export function answer(calculation: Calculation, typed: Typed, bare: Bare = 'declared'): Answered {
  const edge = new Edge(bare);
  const unknown = Object.keys(typed).filter((name) => !Object.hasOwn(calculation.inputs, name));
  for (const name of unknown)
    edge.refuse(
      name,
      `${quoted(name, 40)} is not an input here; there are ${list(calculation.inputs)}`,
    );
  const read = edge.readAll(calculation.inputs, typed, '');
  if (edge.problems.length > 0) return { ok: false, problems: edge.problems };
  try {
    const { because = [], ...results } = calculation.compute(read.values as never) as Record<
      string,
      unknown
    > & { because?: Reason[] };
    const notes =
      calculation.kind === 'formula'
        ? (calculation.notes?.(read.values as never, results as never) ?? [])
        : [];
    const broken = notFinite(results);
    if (broken)
      return {
        ok: false,
        problems: [{ field: '', text: 'These values lie too far out to compute with' }],
      };
    return {
      ok: true,
      values: read.values,
      given: read.given,
      results,
      because: [...because, ...notes, ...edge.cautions],
    };
  } catch (thrown) {
    if (!(thrown instanceof NoAnswer)) throw thrown;
    return {
      ok: false,
      problems: [{ field: thrown.field ?? '', text: thrown.message }],
    };
  }
}

const list = (inputs: Inputs): string => Object.keys(inputs).join(', ');

class Edge {
  readonly problems: Problem[] = [];
  readonly cautions: Reason[] = [];
  readonly bare: Bare;
  constructor(bare: Bare) {
    this.bare = bare;
  }

  refuse(field: string, text: string): undefined {
    this.problems.push({ field, text });
    return undefined;
  }

  readAll(inputs: Inputs, typed: Typed, path: string) {
    const values: Record<string, unknown> = {};
    const given: Answer['given'] = {};
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
    if ('usual' in input && input.usual) {
      const unusual = beyond(value, input.usual, declared);
      if (unusual)
        this.cautions.push({
          kind: 'caution',
          text: `${input.label} ${unusual.replace('must be', 'is usually')}: ${input.usual.why}`,
          ...(input.usual.cite && { cite: input.usual.cite }),
        });
    }
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
      for (const name of Object.keys(row))
        if (!Object.hasOwn(fields, name))
          this.refuse(
            `${at}${name}`,
            `${quoted(name, 40)} is not a column here; there are ${list(fields)}`,
          );
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

function notFinite(value: unknown): boolean {
  if (typeof value === 'number') return !Number.isFinite(value);
  if (Array.isArray(value)) return value.some(notFinite);
  if (typeof value === 'object' && value !== null) return Object.values(value).some(notFinite);
  return false;
}
