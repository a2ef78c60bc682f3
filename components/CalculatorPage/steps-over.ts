import type { QuantityInput } from '../../lib/calculation.ts';
import { printFraction } from '../../lib/text/inches.ts';
import { printNumber } from '../../lib/text/quantity-text.ts';
import { convert, type System, type Unit, unitFor } from '../../lib/units.ts';

/** From the span of a range, in inches or millimeters, the step that its sizes are read in. */
const lengthSteps: Partial<Record<Unit, readonly (readonly [span: number, step: number])[]>> = {
  in: [
    [20, 1],
    [4, 1 / 4],
    [0.5, 1 / 16],
    [0.1, 1 / 32],
    [0, 1 / 64],
  ],
  mm: [
    [100, 10],
    [50, 5],
    [10, 1],
    [2, 0.5],
    [0, 0.1],
  ],
};

/**
 * Round steps over an input's usual range, as a reader of `system` would set them: lengths on a rule,
 * anything else in two figures. None lies outside the range.
 * @returns them as typed, with their unit
 */
export function stepsOver(
  { unit: declared, usual, whole }: QuantityInput,
  system: System,
  count = 5,
): string[] {
  const unit = unitFor(declared, system);
  const [min, max] = [usual?.min, usual?.max].map((bound) =>
    bound === undefined ? undefined : convert(bound, declared, unit),
  );
  if (min === undefined || max === undefined) return [];
  const onRule = lengthSteps[unit]?.find(([span]) => max - min >= span)?.[1];
  const stepAt = (value: number) =>
    onRule ?? (whole ? 1 : 10 ** (Math.floor(Math.log10(Math.abs(value) || 1)) - 1));
  const steps = Array.from({ length: count }, (_, index) => {
    const value = min + ((max - min) * index) / (count - 1);
    const step = stepAt(value);
    const way = index === 0 ? 'ceil' : index === count - 1 ? 'floor' : 'round';
    // A bound on a mark stays there, whatever its last bits say.
    const near = Math.round(value / step);
    return (
      step *
      (Math.abs(value / step - near) < 1e-9 * Math.abs(near) ? near : Math[way](value / step))
    );
  });
  const number = (value: number) =>
    unit === 'in' && onRule
      ? printFraction(value, 1 / onRule)
      : printNumber(value, unit, { digits: onRule || whole ? 6 : 2 });
  const sign = unit === '1' ? '' : ` ${unit}`;
  return [...new Set(steps.map((value) => number(value) + sign))];
}
