/**
 * Judges what a reader typed for one step against the computed value, and says which slip fits.
 * Right is what lies within two parts in a hundred, what rounds as the page's own answers do, and
 * the practical size where one is given. Counts must be exact.
 */
import type { Typed } from '../answer.ts';
import type { Calculation, Output } from '../calculation.ts';
import { type Reading, readQuantity } from '../text/quantity-text.ts';
import { practical, shown } from '../text/shown.ts';
import { convert, type System, type Unit, unitFor } from '../units.ts';
import { slipsByFactor, slipsOf } from './slips.ts';

export interface Asked {
  calculation: Calculation;
  typed: Typed;
  results: Readonly<Record<string, unknown>>;
  want: string;
  system: System;
}
export interface Judged {
  right: boolean;
  /** A sentence for the reader. */
  said: string;
}

/** A ruler, a watch and rounding in between. */
export const tolerance = 0.02;
export const toleranceText =
  'An answer within 2 in a hundred, or rounded like the answers on this page, counts as right; counts and words must be exact. Fractions and units are welcome.';

/** The words to choose from, where the answer is none of a number. */
export function wordsOf({ calculation, results, want }: Asked): readonly string[] | undefined {
  const output = calculation.outputs[want] as Output;
  if ('yes' in output) return ['yes', 'no'];
  return typeof results[want] === 'string' && 'words' in output ? output.words : undefined;
}

/** The unit in which a bare number is taken. */
export function unitAsked({ calculation, want, system }: Asked): Unit {
  const output = calculation.outputs[want] as Output;
  if ('printed' in output) return output.printed[system];
  return 'unit' in output ? unitFor(output.unit, system) : '1';
}

export function judge(asked: Asked, text: string): Judged {
  const { calculation, results, want, system } = asked;
  const output = calculation.outputs[want] as Output;
  const result = results[want];
  if (text.trim() === '') return no('Your answer is empty.');
  const words = wordsOf(asked);
  if (words) return judgeWord(text, shown(output, result, system), words);
  const unit = unitAsked(asked);
  const reading = readIn(text, unit);
  if ('problem' in reading) return no(`Your answer ${reading.problem}.`);
  const value = convert(reading.value, reading.unit, unit);
  const computed = valueIn(asked, unit);
  const answer = shown(output, result, system);
  const size = practical(output, result, system);
  const yes: Judged = { right: true, said: `Right: ${answer}${size ? `, so ${size}` : ''}.` };
  if (isCount(output, computed)) return value === computed ? yes : no(count(value, computed));
  if (Math.abs(value - computed) <= allowance(computed, answer, unit)) return yes;
  if (size !== undefined) {
    const step = numberIn(size, unit);
    if (Math.abs(value - step) <= 1e-9 * Math.abs(step)) return yes;
  }
  return no(slipText(asked, value, computed, unit));
}

function judgeWord(text: string, right: string, words: readonly string[]): Judged {
  const typed = text.trim().toLowerCase();
  if (typed === right.toLowerCase()) return { right: true, said: `Right: ${right}.` };
  return words.some((word) => word.toLowerCase() === typed)
    ? no('Not this one. The hint shows the rule that decides.')
    : no(`Your answer needs one of these: ${words.join(', ')}.`);
}

const no = (said: string): Judged => ({ right: false, said });

function valueIn({ calculation, results, want, system }: Asked, unit: Unit): number {
  const output = calculation.outputs[want] as Output;
  const result = results[want];
  if ('printed' in output) return (result as Record<System, number>)[system];
  return convert(result as number, 'unit' in output ? output.unit : '1', unit);
}

/** Pieces, passes, electrodes: a whole number without a unit. */
const isCount = (output: Output, computed: number): boolean =>
  'unit' in output && output.unit === '1' && Number.isInteger(computed) && !('digits' in output);

function count(value: number, computed: number): string {
  if (!Number.isInteger(value))
    return 'This is a count, so it is a whole number. Which way is it rounded here?';
  if (Math.abs(value - computed) === 1)
    return `Off by one: ${value < computed ? 'the last one counts too, or it was rounded down' : 'it was rounded up, or one was counted twice'}.`;
  return value > computed
    ? 'Too many. The hint shows the rule.'
    : 'Too few. The hint shows the rule.';
}

/** Two parts in a hundred, or half a unit of the last figure that the page shows. */
function allowance(computed: number, answer: string, unit: Unit): number {
  const share = Math.abs(computed) * tolerance;
  const printed = numberIn(answer, unit);
  const rounding = Number.isNaN(printed) ? 0 : Math.abs(printed - computed);
  return Math.max(share, rounding) * (1 + 1e-9) + 1e-12;
}

const numberIn = (text: string, unit: Unit): number => {
  const reading = readIn(text, unit);
  return 'value' in reading ? convert(reading.value, reading.unit, unit) : Number.NaN;
};

/** A difference of temperatures is written in °C like a temperature; here it is clear which. */
const readIn = (text: string, unit: Unit): Reading =>
  readQuantity(unit === 'Cdeg' ? text.replace(/[\s\u00a0]*°?C\s*$/, '') : text, unit);

function slipText(asked: Asked, value: number, computed: number, unit: Unit): string {
  const { calculation, typed, want } = asked;
  const output = calculation.outputs[want] as Output;
  if (computed === 0) return 'Here it is nothing at all.';
  if (roundedWrongly(asked, value, unit))
    return 'Rounded the wrong way: a size that must be enough is rounded up, one that must fit is rounded down.';
  const own = 'unit' in output ? output.unit : unit;
  const told = slipsOf(calculation, typed, want).map((slip) => ({
    ...slip,
    value: convert(slip.value, own, unit),
  }));
  const fits = [...told, ...slipsByFactor(computed)].find(
    (slip) => slip.value !== 0 && Math.abs(value / slip.value - 1) <= tolerance,
  );
  if (fits) return fits.text;
  if (value < 0 !== computed < 0) return 'The sign is the other way round.';
  if (Math.abs(value / computed - 1) <= 0.1)
    return 'Close: carry more digits and round only at the end.';
  const way = value > computed ? 'Too much' : 'Too little';
  return `${way}, and no usual slip fits. Take the hint and go step by step.`;
}

/** The practical size that lies on the other side of the exact one. */
function roundedWrongly(asked: Asked, value: number, unit: Unit): boolean {
  const { calculation, results, want, system } = asked;
  const output = calculation.outputs[want] as Output;
  if (!('round' in output) || !output.round || output.round.way === 'nearest') return false;
  const other = { ...output, round: { ...output.round, way: flipped[output.round.way] } };
  const size = practical(other as Output, results[want], system);
  if (size === undefined) return false;
  const step = numberIn(size, unit);
  return Math.abs(value - step) <= 1e-9 * Math.abs(step);
}
const flipped = { up: 'down', down: 'up' } as const;
