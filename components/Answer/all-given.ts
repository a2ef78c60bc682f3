import type { Typed } from '../../lib/answer.ts';
import type { Calculation, Input } from '../../lib/calculation.ts';

/** Stops the build where a number in the text would rest on an example that nobody named. */
export function allGiven(id: string, calculation: Calculation, given: Typed, page: string): void {
  const missing = Object.entries<Input>(calculation.inputs)
    .filter(
      ([name, input]) =>
        given[name] === undefined &&
        !input.optional &&
        !('default' in input && input.default !== undefined),
    )
    .map(([name]) => name);
  if (missing.length > 0) throw new Error(`${page}: ${id} needs ${missing.join(', ')} to be given`);
}
