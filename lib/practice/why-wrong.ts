/** Which sentence helps with a number that is not right. */
import type { Output } from '../calculation.ts';
import { practical } from '../text/shown.ts';
import { type Unit, unitSign } from '../units.ts';
import { type Asked, outputOf, tolerance } from './asked.ts';
import { isCount, numberIn } from './read-answer.ts';
import { type Slip, slipsOf } from './slips.ts';

/** `value` was typed, `computed` is right, both in `unit`; `written` is how it was typed. */
export function whyWrong(
  asked: Asked,
  value: number,
  computed: number,
  unit: Unit,
  written: { value: number; unit: Unit } = { value, unit },
): string {
  const output = outputOf(asked);
  const counted = isCount(output, computed);
  if (counted && !Number.isInteger(value))
    return 'This is a count, so it is a whole number. Which way is it rounded here?';
  if (computed === 0 && !counted) return 'Here it is nothing at all.';
  if (written.unit !== unit && Math.abs(written.value / computed - 1) <= tolerance)
    return `The number is right, but ${unitSign(written.unit)} stands behind it and asked is ${unitSign(unit)}.`;
  if (roundedWrongly(asked, value, unit))
    return 'Rounded the wrong way: a size that must be enough is rounded up, one that must fit is rounded down.';
  const { neighbors, others } = slipsOf(asked, computed, unit);
  const fits = (slips: readonly Slip[]) => closest(slips, value, counted)?.text;
  const neighbor = fits(neighbors);
  if (neighbor) return neighbor;
  if (counted && Math.abs(value - computed) === 1)
    return `Off by one: ${value < computed ? 'the last one counts too, or it was rounded down' : 'it was rounded up, or one was counted twice'}.`;
  const other = fits(others);
  if (other) return other;
  if (value < 0 !== computed < 0) return 'The sign is the other way round.';
  const way = value > computed ? 'Too much' : 'Too little';
  if (asked.calculation.kind === 'procedure')
    return `${counted ? (value > computed ? 'Too many' : 'Too few') : way}. The hint shows the rule that decides.`;
  if (counted) return `${value > computed ? 'Too many' : 'Too few'}. The hint shows the rule.`;
  if (Math.abs(value / computed - 1) <= 0.1 + 1e-9)
    return 'Close: carry more digits and round only at the end.';
  return `${way}, and no usual slip fits. Take the hint and go step by step.`;
}

/** The first that fits; a closer one only where it fits much better. */
function closest(slips: readonly Slip[], value: number, exactly: boolean): Slip | undefined {
  const off = (slip: Slip) => Math.abs(value / slip.value - 1);
  const fitting = slips.filter(
    (slip) => slip.value !== 0 && off(slip) <= (exactly ? 1e-9 : tolerance),
  );
  const exact = fitting.find((slip) => off(slip) <= tolerance / 5);
  return exact ?? fitting[0];
}

/** The practical size that lies on the other side of the exact one. */
function roundedWrongly(asked: Asked, value: number, unit: Unit): boolean {
  const output = outputOf(asked);
  if (!('round' in output) || !output.round || output.round.way === 'nearest') return false;
  const other = { ...output, round: { ...output.round, way: flipped[output.round.way] } };
  const size = practical(other as Output, asked.results[asked.want], asked.system);
  if (size === undefined) return false;
  const step = numberIn(size, unit);
  return Math.abs(value - step) <= 1e-9 * Math.abs(step);
}
const flipped = { up: 'down', down: 'up' } as const;
