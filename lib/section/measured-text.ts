/** A reading with its uncertainty as it is read: no more digits than the uncertainty bears. */

import { convert, type System, type Unit, unitFor, unitSign } from '../units.ts';
import type { Measured } from './measured.ts';

/** One digit of uncertainty, two where the first is a one: 8.13 ± 0.21 is 8.1 ± 0.2. */
function decimalsFor(uncertainty: number): number {
  const exponent = Math.floor(Math.log10(Number(uncertainty.toPrecision(1))));
  const first = Math.floor(uncertainty / 10 ** exponent);
  return Math.min(6, Math.max(0, (first < 2 ? 1 : 0) - exponent));
}

const minus = (text: string) =>
  Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−');

/** The two numbers in the reader's unit, and that unit's sign. */
export function measuredParts(
  { value, uncertainty }: Measured,
  declared: Unit,
  system: System,
): { value: string; uncertainty: string; sign: string; unit: Unit } {
  const unit = unitFor(declared, system);
  const [shown, around] = [value, uncertainty].map((one) => convert(one, declared, unit)) as [
    number,
    number,
  ];
  // Without any doubt about it, a hundredth of a millimeter is finer than anybody reads.
  const plainly = unit === 'in' || unit === 'in2' ? 4 : unit === 'mm' || unit === 'mm2' ? 2 : 1;
  const decimals = around > 0 ? decimalsFor(around) : plainly;
  return {
    value: minus(shown.toFixed(decimals)),
    uncertainty: around.toFixed(decimals),
    sign: unitSign(unit),
    unit,
  };
}

/** `8.1 ± 0.2 mm`, or `8.13 mm` where there is no doubt. */
export function printMeasured(reading: Measured, declared: Unit, system: System): string {
  const { value, uncertainty, sign } = measuredParts(reading, declared, system);
  const around = reading.uncertainty > 0 ? `\u00a0±\u00a0${uncertainty}` : '';
  if (sign === '°') return around === '' ? `${value}°` : `${value}°${around}°`;
  return `${value}${around}\u00a0${sign}`;
}
