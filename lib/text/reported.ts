/**
 * Results as plain data: a number with its unit, a word, yes or no, or rows of these. The command
 * line, the check list and the pages all report through here.
 */
import type { Calculation, ListOutput, Output } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import { convert, type System, sameKind, type Unit, unitFor, unitOf } from '../units.ts';
import { speak } from './say.ts';

export type ReportedValue = number | string | boolean | object | null;
export interface Reported {
  value: ReportedValue;
  unit?: Unit;
}

export interface Wish {
  /** Where a source prints both systems, the one to report. */
  system?: System;
  /** Another unit of the same kind. */
  unit?: Unit;
}

/** Throws a TypeError for a unit of another kind. */
export function reported(output: Output | undefined, result: unknown, wish: Wish = {}): Reported {
  if (output === undefined) throw new TypeError('there is no such output');
  if (result === undefined || result === null) return { value: null };
  if (typeof result === 'string' && 'text' in output)
    return { value: speak(result, wish.system ?? 'us') };
  if (typeof result === 'string' || typeof result === 'boolean') return { value: result };
  if ('printed' in output) {
    const asked = wish.unit && unitOf(wish.unit).system;
    const system = asked ?? wish.system ?? 'us';
    const { us, metric } = result as PrintedFigure;
    const unit = output.printed[system];
    const value = system === 'us' ? us : metric;
    return wish.unit ? inUnit(value, unit, wish.unit) : { value, unit };
  }
  if ('list' in output) return { value: rows(output, result as Record<string, unknown>[], wish) };
  if ('unit' in output) {
    const own = wish.system ? unitFor(output.unit, wish.system) : output.unit;
    return inUnit(result as number, output.unit, wish.unit ?? own);
  }
  return { value: result as object };
}

function inUnit(value: number, from: Unit, to: Unit): Reported {
  if (!sameKind(from, to))
    throw new TypeError(`it is a ${unitOf(from).kind}, which ${to} does not measure`);
  return { value: convert(value, from, to), unit: to };
}

function rows({ list }: ListOutput, result: Record<string, unknown>[], { system }: Wish): object[] {
  return result.map((row) =>
    Object.fromEntries(
      Object.entries(list).map(([name, column]) => {
        const cell = row[name];
        if (!('unit' in column) || typeof cell !== 'number')
          return [
            name,
            { value: typeof cell === 'string' ? speak(cell, system ?? 'us') : (cell ?? null) },
          ];
        const unit = system ? unitFor(column.unit, system) : column.unit;
        return [name, { value: convert(cell, column.unit, unit), unit }];
      }),
    ),
  );
}

/** An output by name; inside lists by path, such as `specimens.0.count`. */
export function reportedAt(
  calculation: Calculation,
  results: Record<string, unknown>,
  path: string,
  wish?: Wish,
): Reported {
  const [name = '', ...rest] = path.split('.');
  const outputs: Record<string, Output> = calculation.outputs;
  const whole = reported(outputs[name], results[name], rest.length > 0 ? {} : wish);
  if (rest.length === 0) return whole;
  const found = rest.reduce<unknown>(
    (at, key) => (at as Record<string, unknown>)?.[key],
    whole.value,
  );
  if (typeof found === 'object' && found !== null && 'value' in found) {
    const cell = found as Reported;
    if (wish?.unit && cell.unit && typeof cell.value === 'number')
      return inUnit(cell.value, cell.unit, wish.unit);
    return cell;
  }
  return { value: (found ?? null) as ReportedValue };
}
