/**
 * The values that fill the slots of a formula's line with numbers, for a reader of one system. A
 * formula that holds in the reader's units is shown with them; another keeps its source's units,
 * and its answer is converted after it.
 */
import type { Answer } from '../answer.ts';
import type { Formula, QuantityInput } from '../calculation.ts';
import { convert, type System, type Unit, unitFor } from '../units.ts';
import { printQuantity } from './quantity-text.ts';
import { holdsInReaderUnits } from './reader-units.ts';
import { shown } from './shown.ts';

/** By output, then by name; the output's own value stands under `=name`. */
export function slotTexts(
  formula: Formula,
  { values, results }: Answer,
  system: System,
): Record<string, Record<string, string>> {
  const held = holdsInReaderUnits(formula, values);
  const number = (value: number, unit: Unit, own: boolean, digits: number) => {
    const to = own ? unitFor(unit, system) : unit;
    const text = printQuantity(convert(value, unit, to), to, { digits });
    return value < 0 ? `(${text})` : text;
  };
  const lines: Record<string, Record<string, string>> = {};
  for (const [output, description] of Object.entries(formula.outputs)) {
    const own = held.has(output);
    const line: Record<string, string> = {};
    for (const [name, input] of Object.entries(formula.inputs)) {
      const value = values[name];
      line[name] =
        typeof value === 'number'
          ? number(value, (input as QuantityInput).unit, own, 5)
          : String(value);
    }
    for (const [name, { value, unit }] of Object.entries(formula.constants ?? {}))
      line[name] = number(value, unit, own, 6);
    for (const [name, { unit }] of Object.entries(formula.outputs))
      line[name] = number(results[name] as number, unit, own, 4);
    const answer = shown(description, results[output], system);
    const sourced = shown(description, results[output], system, description.unit);
    line[`=${output}`] = own || sourced === answer ? answer : `${sourced} = ${answer}`;
    lines[output] = line;
  }
  return lines;
}
