/**
 * Requests from a program or a letter, in the words and rows that a form lists: `A572 Gr. 50`,
 * `3g + 4g`, true, a moment with its date, a list as text. What cannot be made out stays as it was
 * typed, so that `answer.ts` says what it needs.
 */
import type { Typed, TypedValue } from '../answer.ts';
import type { Input, Inputs } from '../calculation.ts';
import { angleByTheHour } from './clock-place.ts';
import { dayInFull } from './days.ts';
import { readDesignation } from './electrode-designation.ts';
import { listedWord } from './listed-word.ts';
import { firstDay, runningHours } from './moments.ts';
import { asRows } from './rows.ts';

type Given = Readonly<Record<string, unknown>>;

/** Throws nothing, whatever `given` holds; the names of the fields stay as they are. */
export function asListed(inputs: Inputs, given: Given): Typed {
  const rows = Object.fromEntries(
    Object.entries(given).map(([name, value]) => {
      const input = Object.hasOwn(inputs, name) ? inputs[name] : undefined;
      return [name, input && 'list' in input ? asRows(Object.keys(input.list), value) : value];
    }),
  );
  const from = firstDay(momentsOf(inputs, rows));
  return inWords(inputs, withDesignator(inputs, rows), from) as Typed;
}

/** `E7018 H4R` in one field answers the field beside it too. */
function withDesignator(inputs: Inputs, given: Given): Given {
  const { classification, designator } = given;
  if (!('designator' in inputs) || (designator ?? '') !== '') return given;
  const read = readDesignation(String(classification ?? '')).designator;
  return read === undefined ? given : { ...given, designator: read };
}

function inWords(inputs: Inputs, given: Given, from: number | undefined): Given {
  return Object.fromEntries(
    Object.entries(given).map(([name, value]) => {
      const input = Object.hasOwn(inputs, name) ? inputs[name] : undefined;
      return [name, input ? inWord(name, input, value, from) : value];
    }),
  );
}

function inWord(name: string, input: Input, value: unknown, from: number | undefined): unknown {
  if (value === null) return undefined;
  if ('list' in input)
    return Array.isArray(value)
      ? value.map((row) => (isRecord(row) ? inWords(input.list, row, from) : row))
      : value;
  if (!isScalar(value)) return value;
  const text = String(value);
  if ('date' in input) return dayInFull(text);
  if ('choices' in input) return listedWord(input.choices, text) ?? text;
  if (name === 'clockAngle') return angleByTheHour(text);
  return isMoment(input) ? runningHours(text, from) : value;
}

/** Every text that may be a moment, in fields and in rows. */
function momentsOf(inputs: Inputs, given: Given): string[] {
  return Object.entries(given).flatMap(([name, value]) => {
    const input = Object.hasOwn(inputs, name) ? inputs[name] : undefined;
    if (input && 'list' in input && Array.isArray(value))
      return value.flatMap((row) => (isRecord(row) ? momentsOf(input.list, row) : []));
    return input && isMoment(input) && typeof value === 'string' ? [value] : [];
  });
}

const isMoment = (input: Input): boolean => 'unit' in input && input.unit === 'h';
const isScalar = (value: unknown): value is TypedValue | boolean =>
  ['string', 'number', 'boolean'].includes(typeof value);
const isRecord = (value: unknown): value is Given =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
