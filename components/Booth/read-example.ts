/**
 * A worked example as its page shows it: which calculation, with what, about which outputs. Read from
 * the page, since a lesson should not carry the same numbers twice for the few who need them.
 */
import { typedText } from '../../lib/booth/typed-text.ts';
import type { Calculation, Input, Output } from '../../lib/calculation.ts';
import type { System } from '../../lib/units.ts';

/** What a term of a list says to each reader. */
export interface Line {
  label: string;
  shown: Record<System, string>;
}

/** The id in the example's link to its calculator. */
export const calculationOf = (href: string): string | undefined =>
  /\/calculators\/([a-z0-9-]+)\/$/.exec(href)?.[1];

/** The given values by input; undefined where one has rows, which cannot be read back. */
export function givenOf(
  { inputs }: Calculation,
  lines: readonly Line[],
): Record<string, string> | undefined {
  const given: Record<string, string> = {};
  for (const { label, shown } of lines) {
    const found = Object.entries<Input>(inputs).find(([, input]) => input.label === label);
    if (!found || 'list' in found[1]) return undefined;
    const [name, input] = found;
    if ('choices' in input || 'date' in input) given[name] = shown.us;
    else given[name] = typedText(shown, 'printed' in input ? input.printed.us : input.unit);
  }
  return given;
}

/** The outputs that the example is about. */
export const wantedOf = ({ outputs }: Calculation, labels: readonly string[]): string[] =>
  Object.entries<Output>(outputs)
    .filter(([, { label }]) => labels.includes(label))
    .map(([name]) => name);
