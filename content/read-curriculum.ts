/** The course as files, for the audit pages, the files of data and the audit command alike. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { z } from 'astro/zod';
import { parse } from 'yaml';
import { loadCalculation } from '../lib/calculations.ts';
import type { AuditedLesson, AuditedUnit, Curriculum } from '../lib/curriculum/curriculum.ts';
import { sources } from '../lib/sources.ts';
import { calculatorGroups } from './calculator-groups.ts';
import { calculationIds } from './commands/calculation-ids.ts';
import { readChecks } from './read-checks.ts';
import { readExercises } from './read-exercises.ts';
import { readOutlines } from './read-outlines.ts';
import { readingOrder } from './reading-order.ts';
import { lessonSchema } from './schemas/lesson.ts';

/** Another course names its own units. */
const schema = lessonSchema.extend({ unit: z.string() });

const teaching = new Set(
  calculatorGroups.flatMap(({ forTeaching, ids }) => (forTeaching ? ids : [])),
);

/** @param folder where lessons, exercises, checks and, for another course, its order are */
export async function readCurriculum(folder = 'content'): Promise<Curriculum> {
  const units = await orderIn(folder);
  const placed = units.flatMap(({ lessons }) => lessons);
  const written = existsSync(`${folder}/lessons`)
    ? readdirSync(`${folder}/lessons`).filter((name) => name.endsWith('.mdx'))
    : [];
  return {
    units,
    lessons: [...new Set(placed)].flatMap((slug) =>
      readLesson(`${folder}/lessons/${slug}.mdx`, slug),
    ),
    unplaced: written
      .map((name) => name.replace('.mdx', ''))
      .filter((slug) => !placed.includes(slug))
      .sort(),
    exercises: readExercises(`${folder}/exercises`).map(({ coupon, ...exercise }) => ({
      ...exercise,
      pipes: coupon.flatMap(({ nps }) => nps ?? []),
    })),
    calculations: await Promise.all(
      calculationIds().map(async (id) => {
        const { title, cite } = await loadCalculation(id);
        return { id, title, forTeaching: teaching.has(id), sources: cite };
      }),
    ),
    checks: readChecks(`${folder}/checks`),
    outlines: readOutlines(`${folder}/outlines`).map(({ id, source }) => ({ id, source })),
    sources: Object.keys(sources),
  };
}

async function orderIn(folder: string): Promise<readonly AuditedUnit[]> {
  const own = resolve(folder, 'reading-order.ts');
  if (folder === 'content' || !existsSync(own)) return readingOrder;
  return (await import(/* @vite-ignore */ pathToFileURL(own).href)).readingOrder;
}

const terms = /<Term\s+is="([^"]+)"/g;
const calculations = /<(?:Calculator\s+id|(?:Answer|WorkedExample)\s+of)="([^"]+)"/g;
const calculators = /\]\(\/calculators\/([a-z0-9-]+)\//g;
const practice = /<Practice\s+of=\{\[([^\]]*)\]\}|<Practice\s+of="([^"]+)"/g;

function readLesson(file: string, slug: string): AuditedLesson[] {
  if (!existsSync(file)) return [];
  const text = readFileSync(file, 'utf8');
  const [whole = '', frontMatter = ''] = /^---\n([\s\S]*?)\n---/.exec(text) ?? [];
  const read = schema.safeParse(parse(frontMatter));
  if (!read.success) throw new Error(`${file}\n${z.prettifyError(read.error)}`);
  const { introduces, ...lesson } = read.data;
  const body = text.slice(whole.length);
  const practised = [...body.matchAll(practice)].flatMap(
    ([, list, one]) => one ?? [...(list ?? '').matchAll(/'([^']+)'/g)].map(([, id]) => id ?? ''),
  );
  const named = (pattern: RegExp) => [...body.matchAll(pattern)].map(([, name]) => name as string);
  return [
    {
      ...lesson,
      slug,
      skills: introduces.skills,
      terms: introduces.terms,
      inText: {
        terms: [...new Set(named(terms))],
        calculations: [...new Set([...named(calculations), ...practised])],
        calculators: [...new Set(named(calculators))],
      },
    },
  ];
}
