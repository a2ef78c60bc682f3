/**
 * Reading and printing quantities as people type them. Nothing is guessed: text that could mean
 * two things, or nothing, comes back as a sentence that says what was expected.
 */

import { sameKind, type Unit, unitOf, unitSign, units } from '../units.ts';
import { printFraction, readFraction, ruleOf, spellFractions } from './inches.ts';
import { quoted } from './quoted.ts';

export type Reading = { value: number; unit: Unit } | { problem: string };

/** Other ways to write a unit that leave no doubt, in lower case. */
const spellings: Record<string, string> = {
  '"': 'in',
  '”': 'in',
  '″': 'in',
  inch: 'in',
  inches: 'in',
  "'": 'ft',
  '/kg': '1/kg',
  '/lb': '1/lb',
  '°c': 'degc',
  c: 'degc',
  '°f': 'degf',
  f: 'degf',
  '°': 'deg',
  degrees: 'deg',
  '%': 'percent',
  lbs: 'lb',
  sec: 's',
  seconds: 's',
  minute: 'min',
  minutes: 'min',
  hour: 'h',
  hours: 'h',
  amps: 'a',
  volts: 'v',
};

/** A unit without the typist’s ornaments: `in^2`, `in²` and `in2.` are all in2, `MM` is mm. */
function readUnit(written: string): Unit | undefined {
  const plain = written
    .toLowerCase()
    .replace(/[ ^]|\.$/g, '')
    .replace('²', '2')
    .replace('³', '3');
  const meant = spellings[plain] ?? plain;
  return (Object.keys(units) as Unit[]).find((unit) => unit.toLowerCase() === meant);
}

/** A clock time, read only where hours are asked for: elsewhere 1:30 could be minutes. */
const clock = /^\s*(\d{1,4}):([0-5]\d)(?:\s*h)?\s*$/;

const numberShape = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;
const split = /^\s*([+\-−]?[\d.,/½¼¾⅛⅜⅝⅞\s-]*[\d.½¼¾⅛⅜⅝⅞](?:[eE][+-]?\d+)?)\s*(.*?)\s*$/s;

/** Reads `text`; a bare number is taken in `bare`; the answer is of the same kind as `bare`. */
export function readQuantity(text: string, bare: Unit): Reading {
  if (text.trim() === '') return { problem: 'is empty' };
  const time = bare === 'h' ? clock.exec(text) : null;
  if (time) return { value: Number(time[1]) + Number(time[2]) / 60, unit: 'h' };
  const found = split.exec(text.replaceAll('\u00a0', ' '));
  if (!found) return { problem: `needs a number, not ${quoted(text)}` };
  const [, digits = '', rest = ''] = found;
  const unit = rest === '' ? bare : readUnit(rest);
  if (unit === undefined) return { problem: `has an unknown unit ${quoted(rest)}` };
  if (!sameKind(unit, bare))
    return { problem: `is a ${unitOf(bare).kind}, so ${unit} does not fit` };
  const value = readNumber(digits.trim());
  return typeof value === 'string' ? { problem: value } : { value, unit };
}

function readNumber(written: string): number | string {
  const text = spellFractions(written);
  const fraction = readFraction(text);
  if (fraction !== undefined)
    return Number.isNaN(fraction) ? `cannot be read: ${quoted(written)} is no fraction` : fraction;
  if (/^[+\-−]?\d{1,3}(,\d{3})+$/.test(text))
    return `could mean two things: write ${text.replace(/,/g, '')} or ${text.replace(',', '.')}`;
  const plain = text.replace(/^−/, '-').replace(/^([+-]?\d*),(\d+)$/, '$1.$2');
  if (!numberShape.test(plain)) return `needs a number, not ${quoted(written)}`;
  const value = Number(plain);
  return Number.isFinite(value) ? value : 'is too large a number';
}

export interface Printing {
  /** Significant digits. Three serve a booth. */
  digits?: number;
  /** Inches only: the rule to print on, such as 16 or 32. */
  fraction?: number;
}

/** The number alone: `5/16`, `7.9`, `1,970` is written `1970`; never an exponent. */
export function printNumber(
  value: number,
  unit: Unit,
  { digits = 3, fraction }: Printing = {},
): string {
  if (fraction !== undefined && unit === 'in' && value !== 0) {
    const text = printFraction(value, fraction);
    if (text !== '0' && text !== '−0') return text;
  }
  if (value === 0) return '0';
  const size = Math.abs(value);
  const exponent = Math.floor(Math.log10(Number(size.toPrecision(digits))));
  const decimals = Math.min(12, Math.max(0, digits - 1 - exponent));
  const text = size.toFixed(decimals);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return value < 0 ? `−${short}` : short;
}

/** Number and unit as a reader sees them: `5/16 in`, `125 A`, `50 °F`, `45°`. */
export function printQuantity(value: number, unit: Unit, printing?: Printing): string {
  const number = printNumber(value, unit, printing);
  const shown = unitSign(unit);
  return shown === '' ? number : `${number}${/^[°]$/.test(shown) ? '' : '\u00a0'}${shown}`;
}

/**
 * A typed size in another unit, kept as simple as it was meant: `3/8 in` is 9.5 mm, `8 mm` is
 * 5/16 in, 2 mm is 0.079 in. Inches that lie on a 64th are written as fractions.
 */
export function printStated(value: number, unit: Unit): string {
  if (unit === 'in') {
    const rule = ruleOf(value);
    if (rule !== undefined) return printQuantity(value, unit, { fraction: rule });
  }
  const size = Math.abs(value);
  const coarse = unit === 'mm' ? size >= 0.1 && size < 10 : unit === 'in' && size < 0.1;
  const digits = coarse ? (unit === 'mm' && size < 1 ? 1 : 2) : 3;
  return printQuantity(value, unit, { digits });
}
