/** A sentence where strap and plunger do not go together by the code's table. */

import { plungerCites, plungerFit } from '../tables/plungers.ts';
import { printStated, readQuantity } from '../text/quantity-text.ts';
import { sourceName } from '../text/source-name.ts';
import { convert, type System, unitFor } from '../units.ts';
import type { SheetCode } from './sheet-rules.ts';

const known = { read: 'read', memory: 'from memory', practice: 'practice', derived: 'worked out' };

/**
 * @param typed the strap's thickness as it was typed: a table is read in the system of its unit
 * @param strap and the plunger's diameter, in inches
 */
export function plungerWarning(
  code: SheetCode,
  typed: string,
  strap: number,
  plunger: number,
  system: System,
): { warning?: string; basis?: string } {
  const unit = unitFor('in', system);
  const read = readQuantity(typed, unit);
  const own: System = 'unit' in read && read.unit === 'in' ? 'us' : 'metric';
  const measured = (inches: number) => convert(inches, 'in', unitFor('in', own));
  const fitting = plungerFit(code, { value: measured(strap), system: own }, measured(plunger));
  const { fit } = fitting;
  const shown = (value: number) => convert(value, unitFor('in', own), unit);
  const [from, to, diameter] = [fitting.from, fitting.to, measured(plunger)].map(shown) as [
    number,
    number,
    number,
  ];
  if (fit === 'as the table') return {};
  const size = (value: number) => printStated(Number(value.toFixed(3)), unit);
  const asked = from === to ? size(to) : `${size(from)} to ${size(to)}`;
  const what =
    fit === 'strap too thick'
      ? `The table ends at a strap of ${size(system === 'us' ? 3 / 8 : 10)}: a thicker one is cut down to that, or bent on its side as a slice`
      : fit === 'too large'
        ? `${size(diameter)} is too large for this strap: it stretches less than the test asks. The table gives ${asked}`
        : `${size(diameter)} is too small for this strap: it stretches more than the test asks. The table gives ${asked}`;
  const { source, at, known: how } = plungerCites[code];
  const steel = `for steel of up to ${system === 'us' ? '50 ksi' : '345 MPa'} yield`;
  return {
    warning: `Diameter of the mandrel: ${what}.`,
    basis: `${sourceName(source)}, ${at} (${known[how]}), ${steel}.`,
  };
}
