import type { ExerciseSheet } from '../../lib/booth/exercise-sheet.ts';
import { to } from '../Page/to.ts';

/** The sheet of an exercise, or a sentence on why there is none. */
export async function fetchSheet(slug: string): Promise<ExerciseSheet | string> {
  try {
    const answered = await fetch(`${to('/')}exercises/${slug}.json`);
    if (answered.ok) return (await answered.json()) as ExerciseSheet;
    return `The exercise “${slug}” could not be fetched. The rest stands.`;
  } catch {
    return `The exercise “${slug}” could not be fetched: no connection. Reload when there is one.`;
  }
}
