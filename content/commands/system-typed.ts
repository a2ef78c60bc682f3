import type { Typed } from '../../lib/answer.ts';
import type { Calculation, Input } from '../../lib/calculation.ts';
import { readQuantity } from '../../lib/text/quantity-text.ts';
import { type System, unitOf } from '../../lib/units.ts';

/**
 * The system that printed figures and sentences answer in. A size that a table is printed for in
 * both systems decides, the first that was typed; where there is none, any metric size does.
 */
export function systemTyped({ inputs }: Calculation, typed: Typed): System {
  const sizes = Object.entries<Input>(inputs).flatMap(([name, input]) => {
    const text = typed[name];
    if (text === undefined || !('limits' in input)) return [];
    const inBoth = 'printed' in input;
    const reading = readQuantity(String(text), inBoth ? input.printed.us : input.unit);
    return 'unit' in reading ? [{ system: unitOf(reading.unit).system, inBoth }] : [];
  });
  const first = sizes.find(({ inBoth }) => inBoth)?.system;
  return first ?? (sizes.some(({ system }) => system === 'metric') ? 'metric' : 'us');
}
