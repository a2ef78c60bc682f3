/** A typed answer as a number, and what kind of number is asked for. */
import type { Output } from '../calculation.ts';
import { type Reading, readQuantity } from '../text/quantity-text.ts';
import { convert, type Unit } from '../units.ts';

/** A difference of temperatures is written in °C like a temperature; here it is clear which. */
export const readIn = (text: string, unit: Unit): Reading =>
  readQuantity(unit === 'Cdeg' ? text.replace(/[\s\u00a0]*°?C\s*$/, '') : text, unit);

/** A text of the site as a number in `unit`; NaN where it is none. */
export const numberIn = (text: string, unit: Unit): number => {
  const reading = readIn(text, unit);
  return 'value' in reading ? convert(reading.value, reading.unit, unit) : Number.NaN;
};

/** Pieces, passes, electrodes: a whole number without a unit. */
export const isCount = (output: Output, computed: number): boolean =>
  'unit' in output && output.unit === '1' && Number.isInteger(computed) && !('digits' in output);
