import { ruleOf } from '../../lib/text/inches.ts';
import { printQuantity } from '../../lib/text/quantity-text.ts';
import { convert, type System, type Unit, unitFor } from '../../lib/units.ts';
import Both from '../Units/Both.tsx';

/** A computed quantity in both systems; inches on a rule are written as fractions. */
export const sizeText = (value: number, unit: Unit, system: System, digits = 3): string => {
  const to = unitFor(unit, system);
  const shown = convert(value, unit, to);
  const rule = to === 'in' ? ruleOf(shown) : undefined;
  return printQuantity(shown, to, { digits, ...(rule !== undefined && { fraction: rule }) });
};

export default function Size(props: { value: number; unit: Unit; digits?: number }) {
  const { value, unit, digits } = props;
  return (
    <Both
      us={sizeText(value, unit, 'us', digits)}
      metric={sizeText(value, unit, 'metric', digits)}
    />
  );
}
