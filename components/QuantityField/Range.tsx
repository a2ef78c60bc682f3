import type { PrintedInput, QuantityInput } from '../../lib/calculation.ts';
import { printFraction, ruleOf } from '../../lib/inches.ts';
import Said from '../Reasons/Said.tsx';

/** The hint under a box: which values have an answer. */
export default function Range({ id, input }: { id: string; input: QuantityInput | PrintedInput }) {
  const unit = 'printed' in input ? input.printed.us : input.unit;
  const { min, max } = ('usual' in input && input.usual) || input.limits;
  const lead = 'usual' in input && input.usual ? 'usually ' : '';
  const size = (bound: number) => {
    const rule = unit === 'in' ? ruleOf(bound) : undefined;
    return `{${rule === undefined ? bound : printFraction(bound, rule)} ${unit}}`;
  };
  const text =
    min !== undefined && max !== undefined
      ? `${lead}${size(min)} to ${size(max)}`
      : min !== undefined
        ? `${lead}at least ${size(min)}`
        : max !== undefined
          ? `${lead}at most ${size(max)}`
          : '';
  return (
    <p class="field-range" id={id}>
      <Said text={text} />
    </p>
  );
}
