/**
 * May a formula be shown with a reader's own units in it? Some carry a unit inside a number (12
 * inches in a foot, a fit to measurements); those are shown in their source's units only.
 */
import type { Formula, QuantityInput } from '../calculation.ts';
import { convert, type System, unitFor, unitOf } from '../units.ts';

/** The names of the outputs that come out right with partner units put in for the declared ones. */
export function holdsInReaderUnits(formula: Formula, point: Record<string, unknown>): Set<string> {
  const other: System = isMetric(formula) ? 'us' : 'metric';
  const moved = Object.fromEntries(
    Object.entries(point).map(([name, value]) => {
      const unit = (formula.inputs[name] as QuantityInput).unit;
      return [
        name,
        typeof value === 'number' && unit ? convert(value, unit, unitFor(unit, other)) : value,
      ];
    }),
  );
  const results = formula.compute(point as never);
  const movedResults = formula.compute(moved as never);
  const holds = (name: string) => {
    const unit = formula.outputs[name]?.unit as QuantityInput['unit'];
    const expected = convert(results[name] as number, unit, unitFor(unit, other));
    return Math.abs((movedResults[name] as number) - expected) <= 1e-9 * Math.abs(expected);
  };
  return new Set(Object.keys(formula.outputs).filter(holds));
}

const isMetric = (formula: Formula): boolean =>
  Object.values(formula.inputs).some(
    (input) => 'unit' in input && unitOf(input.unit).system === 'metric',
  );
