import type { Given } from '../../lib/answer.ts';
import type { Input } from '../../lib/calculation.ts';
import { printStated } from '../../lib/quantity-text.ts';
import { convert, type System, unitFor, unitSign } from '../../lib/units.ts';

/** A given value as each reader sees it: as typed in its own system, converted in the other. */
export function givenText(
  input: Input,
  given: Given | readonly unknown[],
): { us: string; metric: string } {
  if (Array.isArray(given)) return both(`${given.length} rows`);
  const { text, value, unit } = given as Given;
  if (value === undefined || unit === undefined) return both(text);
  const inSystem = (system: System) => {
    const to = unitFor(unit, system);
    return printStated(convert(value, unit, to), to);
  };
  return 'choices' in input || unitSign(unit) === ''
    ? both(text)
    : { us: inSystem('us'), metric: inSystem('metric') };
}

const both = (text: string) => ({ us: text, metric: text });
