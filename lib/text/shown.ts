/**
 * Results as a reader sees them: a number with its unit in the reader's system, a word, yes or no.
 */
import type { Column, Output, PrintedOutput } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import { convert, type System, type Unit, unitFor } from '../units.ts';
import { printFraction, ruleOf } from './inches.ts';
import { printQuantity, readQuantity } from './quantity-text.ts';
import { speak } from './say.ts';

/** What is shown where there is no value. */
export const nothing = '–';

/** A single result. Lists and shapes have no one text: they come back as ''. */
export function shown(output: Output, result: unknown, system: System, unit?: Unit): string {
  if (result === undefined || result === null) return nothing;
  if (typeof result === 'boolean') return result ? 'yes' : 'no';
  if (typeof result === 'string') return 'text' in output ? speak(result, system) : result;
  if ('printed' in output) {
    const value = (result as PrintedFigure)[system];
    return shownPrinted(output, value, output.printed[system]);
  }
  if ('unit' in output && typeof result === 'number') {
    const to = unit ?? unitFor(output.unit, system);
    const { digits = 3, fraction } = output;
    return printQuantity(convert(result, output.unit, to), to, {
      digits,
      ...(fraction !== undefined && { fraction }),
    });
  }
  return '';
}

/** A figure as printed: no table here has more than four digits, and some are read on a rule. */
export function shownPrinted({ fraction }: PrintedOutput, value: number, unit: Unit): string {
  const onRule = fraction !== undefined && unit === 'in' && (ruleOf(value) ?? 65) <= fraction;
  return printQuantity(value, unit, { digits: 4, ...(onRule && { fraction }) });
}

/** One cell of a list; its text may hold quantities in braces. */
export function shownCell(column: Column, cell: unknown, system: System): string {
  if (cell === undefined || cell === null) return nothing;
  if (typeof cell === 'number' && 'unit' in column) return shown({ ...column }, cell, system);
  return speak(String(cell), system);
}

/**
 * The practical size beside an exact one: `round: { to: '1/16 in|0.5 mm', way: 'up' }`. Undefined
 * where no size is given for the system.
 */
export function practical(output: Output, result: unknown, system: System): string | undefined {
  if (!('unit' in output) || !('round' in output) || !output.round || typeof result !== 'number')
    return undefined;
  const step = output.round.to
    .split('|')
    .map((text) => readQuantity(text, output.unit))
    .find((reading) => 'unit' in reading && reading.unit === unitFor(output.unit, system));
  if (!step || 'problem' in step) return undefined;
  const exact = convert(result, output.unit, step.unit) / step.value;
  // A size that lies on a step, but for the last bits, stays on it.
  const near = Math.round(exact);
  const steps =
    Math.abs(exact - near) < 1e-9
      ? near
      : Math[{ up: 'ceil', down: 'floor', nearest: 'round' }[output.round.way] as 'ceil'](exact);
  const size = steps * step.value;
  return step.unit === 'in'
    ? `${printFraction(size, Math.round(1 / step.value))}\u00a0in`
    : printQuantity(size, step.unit, { digits: 6 });
}
