import { sourceName } from '../text/source-name.ts';
import type { Curriculum } from './curriculum.ts';
import type { Name, NamedKind } from './rule.ts';

/**
 * Names for a reader of the findings: titles in quotation marks, skills and hazards in plain words,
 * publications as they are cited. What the course does not have keeps its id.
 */
export function titlesIn({ units, lessons, exercises, calculations }: Curriculum): Name {
  const titles: Partial<Record<NamedKind, ReadonlyMap<string, string>>> = {
    unit: new Map(units.map(({ id, title }) => [id, title])),
    lesson: new Map(lessons.map(({ slug, title }) => [slug, title])),
    exercise: new Map(exercises.map(({ slug, title }) => [slug, title])),
    calculation: new Map(calculations.map(({ id, title }) => [id, title])),
  };
  return (kind, id) => {
    if (kind === 'source') return sourceName(id);
    if (kind === 'hazard') return inWords(id);
    if (kind === 'skill') return `“${inWords(id)}”`;
    const title = titles[kind]?.get(id);
    return title === undefined ? id : `“${title}”`;
  };
}

const inWords = (id: string) => id.replaceAll('-', ' ');
