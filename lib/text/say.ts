/**
 * Quantities inside sentences. `{3/8 in}` is shown in the reader's units; `{3/4 in|20 mm}` is what
 * a source prints in each system.
 */

import {
  convert,
  isUnit,
  type System,
  sameKind,
  type Unit,
  unitFor,
  unitOf,
  unitSign,
} from '../units.ts';
import { printStated, readQuantity } from './quantity-text.ts';

export type Spoken = string | { us: string; metric: string };

const brace = /\{([^{}]+)\}/g;

/** The sentence in pieces: plain text, and quantities as each system shows them. */
export function speakBoth(text: string): Spoken[] {
  const pieces: Spoken[] = [];
  let from = 0;
  for (const found of text.matchAll(brace)) {
    if (found.index > from) pieces.push(text.slice(from, found.index));
    pieces.push(stated(found[1] as string));
    from = found.index + found[0].length;
  }
  if (from < text.length) pieces.push(text.slice(from));
  return pieces;
}

/** The sentence for a reader of one system. */
export const speak = (text: string, system: System): string =>
  speakBoth(text)
    .map((piece) => (typeof piece === 'string' ? piece : piece[system]))
    .join('');

/** A stated quantity as each system shows it. Throws a TypeError for text that cannot be read. */
export function stated(text: string): { us: string; metric: string } {
  const [first = '', second] = text.split('|').map((part) => part.trim());
  const one = readStated(first);
  const own = unitOf(one.unit).system;
  if (second !== undefined) {
    const other = readStated(second);
    const theirs = unitOf(other.unit).system;
    if (!own || !theirs || own === theirs || !sameKind(one.unit, other.unit))
      throw new TypeError(`“${text}” needs the same quantity in each system`);
    return own === 'us'
      ? { us: one.asWritten, metric: other.asWritten }
      : { us: other.asWritten, metric: one.asWritten };
  }
  const inSystem = (system: System) => {
    if (own === undefined || own === system) return one.asWritten;
    const unit = unitFor(one.unit, system);
    return printStated(convert(one.value, one.unit, unit), unit);
  };
  return { us: inSystem('us'), metric: inSystem('metric') };
}

/** A quantity in our own texts: a number, a space, a unit in its first spelling. */
function readStated(text: string): {
  value: number;
  unit: Unit;
  asWritten: string;
} {
  const [, number = text, unit = '1'] = /^(.+?)\s+(\S+)$/.exec(text) ?? [];
  if (!isUnit(unit)) throw new TypeError(`“${text}” has an unknown unit`);
  const reading = readQuantity(number, unit);
  if ('problem' in reading) throw new TypeError(`“${text}” ${reading.problem}`);
  const shown = unitSign(unit);
  const between = shown === '' || shown === '°' ? '' : '\u00a0';
  return { ...reading, asWritten: `${number}${between}${shown}` };
}
