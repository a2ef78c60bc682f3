/** The course as files, for the audit page and the audit command alike. */
import { existsSync, readFileSync } from 'node:fs';
import { z } from 'astro/zod';
import { parse } from 'yaml';
import type { AuditedLesson, Curriculum } from '../lib/curriculum/curriculum.ts';
import { readChecks } from './read-checks.ts';
import { readExercises } from './read-exercises.ts';
import { readingOrder } from './reading-order.ts';
import { lessonSchema } from './schemas/lesson.ts';

/** Places of the reading order whose lesson is not written are left out. */
export function readCurriculum(folder = 'content'): Curriculum {
  const slugs = readingOrder.flatMap(({ lessons }): readonly string[] => lessons);
  return {
    lessons: slugs.flatMap((slug) => readLesson(`${folder}/lessons/${slug}.mdx`, slug)),
    exercises: readExercises(`${folder}/exercises`),
    checked: [...new Set(readChecks(`${folder}/checks`).map(({ calculation }) => calculation))],
  };
}

function readLesson(file: string, slug: string): AuditedLesson[] {
  if (!existsSync(file)) return [];
  const [, frontMatter = ''] = /^---\n([\s\S]*?)\n---/.exec(readFileSync(file, 'utf8')) ?? [];
  const read = lessonSchema.safeParse(parse(frontMatter));
  if (!read.success) throw new Error(`${file}\n${z.prettifyError(read.error)}`);
  const { introduces, ...lesson } = read.data;
  return [{ ...lesson, slug, skills: introduces.skills }];
}
