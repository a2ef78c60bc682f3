/**
 * Values that a shop would really meet: plate and electrode sizes in sixteenths or whole
 * millimeters, currents in fives, times in whole seconds.
 */

import type { Bounds, Input, PrintedInput, QuantityInput } from '../calculation.ts';
import { addDays } from '../calendar.ts';
import { printNumber, printStated, readQuantity } from '../text/quantity-text.ts';
import { convert, type System, type Unit, unitFor } from '../units.ts';

/** Steps on which values lie, by the unit a reader sees. */
const steps: Partial<Record<Unit, number>> = {
  in: 1 / 16,
  mm: 1,
  A: 5,
  V: 1,
  s: 5,
  min: 1,
  h: 1,
  percent: 5,
  deg: 5,
  degF: 25,
  degC: 10,
  'in/min': 0.5,
  'mm/min': 10,
};
const electrodes = { us: ['3/32', '1/8', '5/32'], metric: ['2.4', '3.2', '4'] };

/**
 * The text of a value for one input, with its unit; `share` from 0 to 1 picks it. `spread` draws the
 * range in around the example: 1 is all of it, 0 the example alone.
 */
export function shopValue(
  name: string,
  input: Input,
  share: number,
  system: System,
  spread = 1,
): string {
  if ('list' in input) throw new TypeError(`${name} is a list`);
  if ('choices' in input) return input.choices[Math.floor(share * input.choices.length)] as string;
  if ('date' in input) return addDays(input.example, Math.round((share - 0.5) * 300 * spread));
  const declared = 'printed' in input ? input.printed.us : input.unit;
  const unit = unitFor(declared, system);
  if (name === 'diameter' && declared === 'in')
    return `${electrodes[system][Math.floor(share * 3)]} ${unit}`;
  const { low, high } = range(input, declared, unit, spread);
  const value = low + (high - low) * share;
  const wanted = steps[unit];
  const whole = 'whole' in input && input.whole;
  const step = whole ? 1 : fine(wanted ?? tenth(high), high - low);
  const stepped = Math.min(high, Math.max(low, Math.round(value / step) * step));
  if (unit === 'in') {
    const [text = ''] = printStated(Math.round(stepped * 64) / 64, 'in').split('\u00a0');
    return `${text} in`;
  }
  const text = printNumber(Number(stepped.toPrecision(4)), unit, { digits: 4 }).replace('−', '-');
  return unit === '1' ? text : `${text} ${unit}`;
}

/**
 * A third or so to each side of the example, inside the usual range: that range covers the whole trade,
 * and one booth meets little of it. Without a usual range, a quarter to each side.
 */
function range(input: QuantityInput | PrintedInput, declared: Unit, unit: Unit, spread: number) {
  const usual: Bounds | undefined = 'usual' in input ? input.usual : undefined;
  const example = exampleOf(input, declared);
  const near = (bound: number | undefined, wide: number, narrow: number) =>
    bound === undefined || example <= 0 ? (bound ?? example * narrow) : example * wide;
  const low = Math.max(
    near(usual?.min, 0.7, 0.75),
    usual?.min ?? Number.NEGATIVE_INFINITY,
    input.limits.min ?? Number.NEGATIVE_INFINITY,
  );
  const high = Math.min(
    near(usual?.max, 1.4, 1.25),
    usual?.max ?? Number.POSITIVE_INFINITY,
    input.limits.max ?? Number.POSITIVE_INFINITY,
  );
  const drawn = (bound: number) => convert(example + (bound - example) * spread, declared, unit);
  return { low: drawn(low), high: drawn(high) };
}

function exampleOf(input: QuantityInput | PrintedInput, declared: Unit): number {
  const [text, bare] =
    typeof input.example === 'string'
      ? [input.example, declared]
      : [input.example.us, unitFor(declared, 'us')];
  const reading = readQuantity(text, bare);
  return 'value' in reading ? convert(reading.value, reading.unit, declared) : 1;
}

const tenth = (size: number): number => 10 ** Math.floor(Math.log10(Math.abs(size) || 1) - 1);

/** A step that leaves at least eight values in a range. */
const fine = (step: number, span: number): number =>
  span / step >= 8 || span <= 0 ? step : fine(step / 2, span);
