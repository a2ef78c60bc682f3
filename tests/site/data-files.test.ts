/** The files that the site hands out, each against its published schema or list of columns. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { readCsv } from '../../lib/csv.ts';
import { site } from './built-site.ts';

const textOf = (path: string) => readFileSync(join(site.directory, 'data', path), 'utf8');
const dataOf = (path: string) => JSON.parse(textOf(path));

describe.each(['curriculum', 'calculations', 'sources', 'tables'])('%s.json', (name) => {
  const validate = new Ajv({ strict: true, allErrors: true }).compile(
    dataOf(`schemas/${name}.json`),
  );
  it('keeps to its schema', () => {
    validate(dataOf(`${name}.json`));
    expect(validate.errors).toBeNull();
  });
  it('would be caught with a field that the schema does not name', () => {
    const data = dataOf(`${name}.json`);
    (Array.isArray(data) ? data[0] : data).surplus = 1;
    expect(validate(data)).toBe(false);
  });
});

const tables: { file: string; rows: number; columns: { name: string }[] }[] =
  dataOf('tables.json').tables;

describe.each(tables)('$file', ({ file, rows, columns }) => {
  it('has the columns and rows that tables.json names', () => {
    const names = columns.map(({ name }) => name);
    const [first] = textOf(file).replace('\uFEFF', '').split('\r\n');
    expect(first).toBe(names.join(','));
    const read = readCsv(textOf(file), names);
    expect(read.ok && read.rows.length).toBe(rows);
  });
});

it('the tables that reviewers are promised are there', () => {
  expect(tables.map(({ file }) => file)).toEqual([
    'lessons.csv',
    'skills.csv',
    'coverage.csv',
    'exercises.csv',
    'checks.csv',
  ]);
});

it('sources.json holds CSL items that can be told apart', () => {
  const ids = dataOf('sources.json').map(({ id }: { id: string }) => id);
  expect(ids.length).toBeGreaterThan(30);
  expect(new Set(ids).size).toBe(ids.length);
});
