import { answer } from '../../lib/answer.ts';
import { loadCalculation } from '../../lib/calculations.ts';

interface Electrodes {
  count?: number | undefined;
  computed?:
    | { of: string; given: Record<string, string>; output: string; times?: number | undefined }
    | undefined;
}

/**
 * Electrodes for one attempt: as stated, or as the library computes it.
 * @throws when the calculation refuses the exercise's own figures
 */
export async function electrodesNeeded({ count, computed }: Electrodes): Promise<number> {
  if (!computed) return count ?? 0;
  const { of, given, output, times = 1 } = computed;
  const answered = answer(await loadCalculation(of), given);
  if (!answered.ok) {
    const problems = answered.problems.map(({ field, text }) => `${field}: ${text}`).join('; ');
    throw new Error(`an exercise asks ${of} for ${output}, which answers: ${problems}`);
  }
  const one = answered.results[output];
  if (typeof one !== 'number') throw new Error(`${of} has no number called ${output}`);
  return one * times;
}
