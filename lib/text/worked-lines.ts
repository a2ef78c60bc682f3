/**
 * The three lines under every formula: with symbols, with numbers, and the answer, as plain text
 * in the source's units.
 */
import type { Answer } from '../answer.ts';
import type { Formula, QuantityInput } from '../calculation.ts';
import { convert } from '../units.ts';
import { printQuantity } from './quantity-text.ts';
import { substitute } from './substitute.ts';

export interface WorkedLines {
  name: string;
  symbols: string;
  numbers: string;
  answer: string;
}

/**
 * Three lines for each output, in their order; a later line may use the result of an earlier one.
 */
export function workedLines(formula: Formula, { given, results }: Answer): WorkedLines[] {
  const symbols = new Map<string, string>();
  const values = new Map<string, string>();
  for (const [name, input] of Object.entries(formula.inputs)) {
    symbols.set(name, 'symbol' in input ? input.symbol : name);
    if (given[name]) values.set(name, givenText(input as QuantityInput, given[name] as never));
  }
  for (const [name, constant] of Object.entries(formula.constants ?? {})) {
    symbols.set(name, constant.symbol);
    values.set(name, printQuantity(constant.value, constant.unit, { digits: 6 }));
  }
  return Object.entries(formula.outputs).map(([name, output]) => {
    const line = {
      name,
      symbols: `${output.symbol ?? name} = ${substitute(output.formula, (word) => symbols.get(word))}`,
      numbers: substitute(output.formula, (word) => values.get(word)),
      answer: printQuantity(results[name] as number, output.unit, { digits: output.digits ?? 3 }),
    };
    symbols.set(name, output.symbol ?? name);
    values.set(name, bracketed(printQuantity(results[name] as number, output.unit, { digits: 4 })));
    return line;
  });
}

function givenText(
  input: QuantityInput,
  given: { text: string; value?: number; unit?: never },
): string {
  if (given.value === undefined || given.unit === undefined) return `"${given.text}"`;
  const value = convert(given.value, given.unit, input.unit);
  return bracketed(printQuantity(value, input.unit, { digits: 5 }));
}

const bracketed = (text: string): string => (/[\s\u00a0/−]/.test(text) ? `(${text})` : text);
