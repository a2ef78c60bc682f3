/** What each statement stands on, so that what nobody can look up is listed plainly. */
import type { Known } from '../citation.ts';
import type { Curriculum } from './curriculum.ts';

export interface Footing {
  known: Known;
  at: { page: 'lesson' | 'exercise' | 'calculation'; id: string; title: string };
  /** What is stated. */
  says: string;
  source?: string | undefined;
  /** Clause or table there. */
  clause?: string | undefined;
}

/** Every statement whose footing is named: of lessons, of acceptance points, of calculations. */
export function footing({ lessons, exercises, calculations }: Curriculum): Footing[] {
  return [
    ...lessons.flatMap(({ slug, title, sources }) =>
      sources.map(
        (one): Footing => ({
          known: one.known,
          at: { page: 'lesson', id: slug, title },
          says: one.for,
          source: one.source,
          clause: one.at,
        }),
      ),
    ),
    ...exercises.flatMap(({ slug, title, grading }) =>
      grading.map(
        (one): Footing => ({
          known: one.known,
          at: { page: 'exercise', id: slug, title },
          says: one.item,
          source: one.source,
          clause: one.at,
        }),
      ),
    ),
    ...calculations.flatMap(({ id, title, sources }) =>
      sources.map(
        (one): Footing => ({
          known: one.known,
          at: { page: 'calculation', id, title },
          says: title,
          source: one.source,
          clause: one.at,
        }),
      ),
    ),
  ];
}
