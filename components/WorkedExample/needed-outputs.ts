import type { Calculation, Output } from '../../lib/calculation.ts';

/** The outputs whose lines an example shows: those it is about, and those their formulas use. */
export function neededOutputs(calculation: Calculation, wanted: readonly string[]): string[] {
  if (calculation.kind !== 'formula') return [];
  const all: Record<string, Output> = calculation.outputs;
  const leadsTo = (name: string): boolean =>
    wanted.some((one) =>
      new RegExp(`\\b${name}\\b`).test((all[one] as { formula?: string }).formula ?? ''),
    );
  return Object.keys(all).filter((name) => wanted.includes(name) || leadsTo(name));
}
