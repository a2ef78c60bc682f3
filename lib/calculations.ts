/**
 * One file a calculation, found by its id. Plain Node runs this import as it stands and bundlers
 * split it into one chunk a file. Check the id against the folder's list first.
 */
import type { Calculation } from './calculation.ts';

/** The calculation of that id. Rejects for an id that has no file. */
export const loadCalculation = async (id: string): Promise<Calculation> =>
  (await import(`./calculations/${id}.ts`)).default;
