/** The course and its verdict, read once for all pages that show them. */
import { audit } from '../lib/curriculum/rules.ts';
import { titlesIn } from '../lib/curriculum/titles.ts';
import { readCurriculum } from './read-curriculum.ts';

async function read() {
  const course = await readCurriculum();
  return { course, verdicts: audit(course, titlesIn(course)) };
}

let reading: ReturnType<typeof read> | undefined;

export function courseAudit(): ReturnType<typeof read> {
  reading ??= read();
  return reading;
}
