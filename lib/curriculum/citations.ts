/** Every place that cites a publication, with the clause and how it is known. */
import type { Known } from '../citation.ts';
import type { Curriculum } from './curriculum.ts';

export interface CitedBy {
  page: 'lesson' | 'exercise' | 'calculation';
  id: string;
  title: string;
  /** Clause, table or page, each once; empty where none is named. */
  clauses: { at: string; known: Known }[];
}

interface Citing {
  source?: string | undefined;
  at?: string | undefined;
  known: Known;
}

/** Places by source id, in the order of the course: lessons, exercises, calculations. */
export function citations({
  lessons,
  exercises,
  calculations,
}: Curriculum): Map<string, CitedBy[]> {
  const found = new Map<string, CitedBy[]>();
  const add = (place: Omit<CitedBy, 'clauses'>, citing: readonly Citing[]) => {
    for (const { source, at = '', known } of citing) {
      if (!source) continue;
      const list = found.get(source) ?? [];
      found.set(source, list);
      let entry = list.find(({ page, id }) => page === place.page && id === place.id);
      if (!entry) {
        entry = { ...place, clauses: [] };
        list.push(entry);
      }
      if (!entry.clauses.some((one) => one.at === at && one.known === known))
        entry.clauses.push({ at, known });
    }
  };
  for (const { slug, title, sources } of lessons) add({ page: 'lesson', id: slug, title }, sources);
  for (const { slug, title, grading } of exercises)
    add({ page: 'exercise', id: slug, title }, grading);
  for (const { id, title, sources } of calculations)
    add({ page: 'calculation', id, title }, sources);
  return found;
}
