import { describe, expect, it } from 'vitest';
import { publishedTables } from '../../../content/published.ts';
import { readChecks } from '../../../content/read-checks.ts';
import { readCurriculum } from '../../../content/read-curriculum.ts';
import { readCsv } from '../../../lib/csv.ts';
import { tableAsCsv } from '../../../lib/published/table.ts';

const tables = await publishedTables();
const course = await readCurriculum();
const rows = (name: string) => {
  const table = tables.find((one) => one.name === name);
  const read = readCsv(
    table ? tableAsCsv(table) : '',
    table?.columns.map((column) => column.name) ?? [],
  );
  if (!read.ok) throw new Error(read.problem);
  return read.rows;
};

describe.each(tables)('$name.csv', (table) => {
  it('names each column once and says what it holds', () => {
    const names = table.columns.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    expect(table.columns.every(({ holds }) => holds.endsWith('.'))).toBe(true);
  });
  it('reads back with every row', () => {
    expect(rows(table.name).length).toBe(table.rows.length);
  });
});

it('has a row for every lesson, skill, acceptance point and check', () => {
  expect(rows('lessons').map(({ lesson }) => lesson)).toEqual(course.lessons.map((l) => l.slug));
  expect(rows('skills').length).toBe(
    course.lessons.reduce((sum, { skills }) => sum + Object.keys(skills).length, 0),
  );
  expect(rows('exercises').length).toBe(
    course.exercises.reduce((sum, { grading }) => sum + grading.length, 0),
  );
  expect(rows('checks').length).toBe(readChecks().length);
});

it('splits at the semicolon into ids that exist', () => {
  const known = new Set(course.lessons.flatMap(({ skills }) => Object.keys(skills)));
  const named = rows('lessons').flatMap((row) => [
    ...(row.introduces ?? '').split('; '),
    ...(row.needs ?? '').split('; ').filter(Boolean),
  ]);
  expect(named.filter((skill) => !known.has(skill))).toEqual([]);
});

it('the running total of the lessons is the sum of their hours', () => {
  let sum = 0;
  for (const row of rows('lessons')) {
    for (const kind of ['reading hours', 'practice hours', 'graded hours', 'side hours'])
      sum += Number(row[kind]);
    expect(Number(row['running total'])).toBeCloseTo(sum, 1);
  }
});
