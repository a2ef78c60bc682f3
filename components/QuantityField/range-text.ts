import type { Bounds, PrintedInput, QuantityInput } from '../../lib/calculation.ts';
import { printFraction, ruleOf } from '../../lib/text/inches.ts';
import type { Unit } from '../../lib/units.ts';

/** The values that are usual, or else those that are answered, as a sentence with braces. */
export function rangeText(input: QuantityInput | PrintedInput): string {
  const unit = 'printed' in input ? input.printed.us : input.unit;
  const usual = 'usual' in input ? input.usual : undefined;
  const text = boundsText(usual ?? input.limits, unit);
  return usual ? `usually ${text}` : text;
}

/** `{1/8 in} to {3/8 in}`, `at least {1 s}`. */
export function boundsText({ min, max }: Bounds, unit: Unit): string {
  const size = (bound: number) => {
    const rule = unit === 'in' ? ruleOf(bound) : undefined;
    return `{${rule === undefined ? bound : printFraction(bound, rule)} ${unit}}`;
  };
  if (min === undefined) return max === undefined ? 'any' : `at most ${size(max)}`;
  return max === undefined ? `at least ${size(min)}` : `${size(min)} to ${size(max)}`;
}
