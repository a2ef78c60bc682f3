import type { LessonEntry } from './course.ts';

export interface GlossaryEntry {
  term: string;
  definition: string;
  /** The lesson that defines it. */
  taughtIn: LessonEntry;
  /** Other lessons that link to it, in reading order. */
  alsoIn: LessonEntry[];
}

const uses = /<Term\s+is="([^"]+)"/g;

/** Every term that the lessons define, by the alphabet, with the lessons that use it. */
export function glossary(lessons: readonly LessonEntry[]): GlossaryEntry[] {
  const used = lessons.map((lesson) => ({
    lesson,
    terms: new Set([...(lesson.body ?? '').matchAll(uses)].map(([, term]) => term)),
  }));
  const entries = lessons.flatMap((taughtIn) =>
    Object.entries(taughtIn.data.introduces.terms).map(([term, definition]) => ({
      term,
      definition,
      taughtIn,
      alsoIn: used
        .filter(({ lesson, terms }) => lesson !== taughtIn && terms.has(term))
        .map(({ lesson }) => lesson),
    })),
  );
  return entries.sort((a, b) => a.term.localeCompare(b.term, 'en'));
}
