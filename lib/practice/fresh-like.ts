/** The same problem with other numbers, near those of an example and on the steps of a shop. */
import { type Answer, answer, type Typed, type TypedValue } from '../answer.ts';
import type { Calculation, Input } from '../calculation.ts';
import { printStated, readQuantity } from '../text/quantity-text.ts';
import { convert, type System, type Unit, unitFor } from '../units.ts';
import { seeded } from './seeded.ts';

/** Steps on which a shop's values lie: by unit, for sizes from the bound up. */
const steps: Partial<Record<Unit, readonly (readonly [from: number, step: number])[]>> = {
  in: [
    [0, 1 / 64],
    [0.12, 1 / 32],
    [0.25, 1 / 16],
    [2, 1 / 4],
    [6, 1 / 2],
  ],
  mm: [
    [0, 0.5],
    [10, 1],
    [50, 5],
    [200, 10],
  ],
  A: [[0, 5]],
  V: [
    [0, 0.5],
    [40, 2],
  ],
  s: [[0, 5]],
  min: [[0, 1]],
  h: [[0, 0.25]],
  percent: [[0, 5]],
  degF: [[-99, 25]],
  degC: [[-99, 10]],
  'in/min': [[0, 0.5]],
  'mm/min': [[0, 10]],
};

/**
 * What is typed for the fresh problem, and its answer. Choices, angles, core wires and what a source
 * fixes stay as the example has them. Undefined where the example has nothing that can be moved.
 */
export function freshLike(
  calculation: Calculation,
  given: Typed,
  wanted: readonly string[],
  seed: number,
  system: System,
): { typed: Typed; found: Answer } | undefined {
  const next = seeded('fresh', seed);
  for (let attempt = 0; attempt < 60; attempt++) {
    const typed: Record<string, TypedValue | undefined> = {};
    for (const [name, input] of Object.entries<Input>(calculation.inputs))
      typed[name] = moved(name, input, given[name], next(), system);
    if (JSON.stringify(typed) === JSON.stringify(given)) continue;
    const found = answer(calculation, typed);
    if (found.ok && wanted.every((want) => isFit(found.results[want]))) return { typed, found };
  }
  return undefined;
}

const isFit = (result: unknown): boolean =>
  result !== undefined && !(typeof result === 'number' && result <= 0);

function moved(
  name: string,
  input: Input,
  text: TypedValue | undefined,
  share: number,
  system: System,
): TypedValue | undefined {
  if (text === undefined || typeof text === 'object') return text;
  if ('choices' in input || 'list' in input || 'date' in input) return text;
  const declared = 'printed' in input ? input.printed.us : input.unit;
  const reading = readQuantity(String(text), declared);
  if ('problem' in reading) return text;
  if (name === 'clockAngle') return `${15 * Math.round(share * 24)} deg`;
  const own = unitFor(reading.unit, system);
  const value = convert(reading.value, reading.unit, own);
  if (stays(name, input, own)) return reading.unit === own ? text : printed(value, own);
  const raw = value * (0.75 + 0.6 * share);
  if ('whole' in input && input.whole) return String(Math.max(1, Math.round(raw)));
  const step = stepFor(value, own);
  return printed(Math.max(step, Math.round(raw / step) * step), own);
}

const stays = (name: string, input: Input, unit: Unit): boolean =>
  /diameter$/i.test(name) || unit === 'deg' || ('default' in input && input.default !== undefined);

/** The shop's step for the unit, or one in the second figure. */
const stepFor = (value: number, unit: Unit): number =>
  (steps[unit] ?? []).findLast(([from]) => value >= from)?.[1] ??
  10 ** (Math.floor(Math.log10(Math.abs(value) || 1)) - 1);

const printed = (value: number, unit: Unit): string => {
  const number = printStated(value, unit)
    .replace('−', '-')
    .replace(/[\u00a0°%].*$/, '');
  return unit === '1' ? number : `${number} ${unit}`;
};
