/** What the site hands out as files, built once for all endpoints and for the page about them. */

import { createHash } from 'node:crypto';
import { loadCalculation } from '../lib/calculations.ts';
import { checksTable } from '../lib/published/checks-table.ts';
import {
  coverageTable,
  exercisesTable,
  lessonsTable,
  skillsTable,
} from '../lib/published/course-tables.ts';
import { curriculumFile } from '../lib/published/curriculum-file.ts';
import { sourcesFile } from '../lib/published/sources-file.ts';
import type { PublishedTable } from '../lib/published/table.ts';
import { publishedVersion } from '../lib/published/version.ts';
import packed from '../package.json' with { type: 'json' };
import { described } from './commands/described.ts';
import { comparedChecks } from './compared-checks.ts';
import { courseAudit } from './course-audit.ts';

export const edition = packed.version;

/** A short mark that changes with any change of lessons, exercises or rules. */
export async function contentsMark(): Promise<string> {
  const { course } = await courseAudit();
  const text = JSON.stringify(curriculumFile(course, edition));
  return createHash('sha256').update(text).digest('hex').slice(0, 12);
}

export async function publishedTables(): Promise<PublishedTable[]> {
  const { course } = await courseAudit();
  return [
    lessonsTable(course),
    skillsTable(course),
    coverageTable(course),
    exercisesTable(course),
    checksTable(await comparedChecks()),
  ];
}

/** The JSON files by name; each has a schema of that name. */
export async function publishedFiles(): Promise<Record<string, unknown>> {
  const { course } = await courseAudit();
  const tables = await publishedTables();
  return {
    curriculum: curriculumFile(course, edition),
    calculations: {
      version: publishedVersion,
      calculations: await Promise.all(
        course.calculations.map(async ({ id }) => described(id, await loadCalculation(id))),
      ),
    },
    sources: sourcesFile(),
    tables: {
      version: publishedVersion,
      tables: tables.map(({ name, holds, rows, columns }) => ({
        file: `${name}.csv`,
        holds,
        rows: rows.length,
        columns,
      })),
    },
  };
}
