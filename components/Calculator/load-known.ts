/** Loads a calculation at build, or stops the build with the known ids. */
import type { Calculation } from '../../lib/calculation.ts';
import { loadCalculation } from '../../lib/calculations.ts';
import { calculationIds } from './calculation-ids.ts';

export async function loadKnown(id: string, page: string): Promise<Calculation> {
  if (!calculationIds.includes(id))
    throw new Error(
      `${page}: there is no calculation "${id}"; known: ${calculationIds.join(', ')}`,
    );
  return loadCalculation(id);
}
