import { loadCalculation } from '../calculations.ts';
import type { Practiced } from './problem.ts';
import { loadScenes } from './scenes.ts';

/** Calculation and scenes, side by side. */
export async function loadPracticed(id: string): Promise<Practiced> {
  const [calculation, scenes] = await Promise.all([loadCalculation(id), loadScenes(id)]);
  return { id, calculation, scenes };
}
