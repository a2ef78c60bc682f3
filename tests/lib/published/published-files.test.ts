/** The files that the site hands out, of a small course: each field where its name says, each schema closed. */
import Ajv from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { checksTable } from '../../../lib/published/checks-table.ts';
import {
  coverageTable,
  exercisesTable,
  lessonsTable,
  skillsTable,
} from '../../../lib/published/course-tables.ts';
import { curriculumFile } from '../../../lib/published/curriculum-file.ts';
import { schemas } from '../../../lib/published/schemas.ts';
import { sourcesFile } from '../../../lib/published/sources-file.ts';
import { type PublishedTable, publishedTable, tableAsCsv } from '../../../lib/published/table.ts';
import { sources } from '../../../lib/sources.ts';
import {
  bead,
  groove,
  sound,
  tryBead,
  tryGroove,
  withChanges,
} from '../curriculum/sound-course.ts';

const course = () =>
  withChanges(
    [
      {
        ...bead,
        minutes: 25,
        position: ['flat', 'horizontal'],
        electrodes: [...bead.electrodes, { classification: 'E6010', diameter: '3/32 in' }],
        skills: { 'do-bead': 'Run a bead of {1/4 in}', look: 'Look' },
        terms: { pool: 'Melt over {1/8 in} wide' },
        hazards: ['noise', 'grinding'],
        sources: [{ source: 'book', at: 'p. 3', known: 'read', for: 'Beads' }],
      },
      { ...groove, needs: ['do-bead', 'look'] },
    ],
    [
      {
        ...tryBead,
        title: 'Bead',
        practises: ['do-bead', 'look'],
        minutes: 50,
        grading: [
          {
            item: 'leg of {1/4 in}',
            limit: 'At least {1/4 in}',
            known: 'memory',
            source: 'book',
            at: 'p. 1',
          },
          { item: 'looks', limit: 'Even', known: 'practice' },
        ],
      },
      { ...tryGroove, station: 'side', attempts: 2, minutes: 20 },
    ],
  );
const rowsOf = ({ columns, rows }: PublishedTable) =>
  rows.map((row) => Object.fromEntries(columns.map(({ name }, at) => [name, row[at]])));
const plain = (text: unknown) => String(text).replaceAll('\u00a0', ' ');

describe('the table of lessons', () => {
  it('has each lesson’s own facts and hours, running on', () => {
    const [gate, second, third] = rowsOf(lessonsTable(course()));
    expect(gate).toMatchObject({ number: 1, lesson: 'gate', electrodes: '' });
    expect(second).toEqual({
      number: 2,
      lesson: 'bead',
      title: 'bead',
      unit: 'all',
      positions: 'flat; horizontal',
      joints: 'bead',
      electrodes: 'E7018 1/8 in; E6010 3/32 in',
      introduces: 'do-bead; look',
      needs: 'do-gate',
      calculations: 'travel-speed',
      exercises: 'try-bead',
      'hazards first named': 'noise; grinding',
      // 25 min of reading; three attempts of 50 min, the last one graded.
      'reading hours': 0.417,
      'practice hours': 1.667,
      'graded hours': 0.833,
      'side hours': 0,
      // 20 min of reading and an hour at the gate before it.
      'running total': 4.25,
    });
    // Two attempts of 20 min at the side.
    expect(third).toMatchObject({ number: 3, 'practice hours': 0, 'side hours': 0.667 });
  });
});

describe('the tables of skills, coverage and exercises', () => {
  it('have each skill with the lessons that introduce, practice, assess and need it', () => {
    const [, second, third] = rowsOf(skillsTable(course()));
    expect({ ...second, 'the learner can': plain(second?.['the learner can']) }).toEqual({
      skill: 'do-bead',
      'the learner can': 'Run a bead of 1/4 in',
      'introduced in': 'bead',
      'practiced in': 'bead; groove',
      'assessed in': 'bead',
      'needed in': 'groove',
    });
    expect(third).toMatchObject({ skill: 'look', 'practiced in': 'bead', 'assessed in': '' });
  });

  it('have each position, joint and electrode with its exercises', () => {
    expect(rowsOf(coverageTable(course()))).toEqual([
      {
        position: 'flat',
        joint: 'bead',
        electrode: 'E7018',
        diameter: '1/8 in',
        exercises: 'try-bead',
      },
      {
        position: 'flat',
        joint: 'groove',
        electrode: 'E7018',
        diameter: '1/8 in',
        exercises: 'try-groove',
      },
    ]);
  });

  it('have a numbered row for each point of acceptance', () => {
    const rows = rowsOf(exercisesTable(course())).filter(({ exercise }) => exercise === 'try-bead');
    expect(rows.map((row) => ({ ...row, item: plain(row.item), limit: plain(row.limit) }))).toEqual(
      [
        {
          point: 1,
          item: 'leg of 1/4 in',
          limit: 'At least 1/4 in',
          source: 'book',
          at: 'p. 1',
          known: 'memory',
        },
        {
          point: 2,
          item: 'looks',
          limit: 'Even',
          source: undefined,
          at: undefined,
          known: 'practice',
        },
      ].map((point) => ({
        exercise: 'try-bead',
        title: 'Bead',
        lesson: 'bead',
        station: 'booth',
        positions: 'flat',
        joints: 'bead',
        electrodes: 'E7018 1/8 in',
        minutes: 50,
        attempts: 3,
        practices: 'do-bead; look',
        assesses: 'do-bead',
        ...point,
      })),
    );
  });
});

describe('the table of checks', () => {
  const check = {
    id: 'one',
    calculation: 'heat-input',
    claim: 'A claim',
    inputs: { voltage: '22 V' },
    source: 'book',
    at: 'p. 1',
    known: 'read',
  };
  it('has what is printed beside what is computed', () => {
    const [row] = rowsOf(
      checksTable([
        {
          check: {
            ...check,
            output: 'heatInput',
            printed: '22',
            note: 'Mind',
            tolerance: { is: 0.1, why: 'rounded' },
          },
          computed: { value: 22.04, unit: 'kJ/in' },
          agrees: true,
          difference: 0.04,
          within: 0.1,
        },
      ]),
    );
    expect(row).toEqual({
      check: 'one',
      calculation: 'heat-input',
      claim: 'A claim',
      inputs: '{"voltage":"22 V"}',
      output: 'heatInput',
      printed: '22',
      'refused input': undefined,
      computed: 22.04,
      unit: 'kJ/in',
      difference: 0.04,
      within: 0.1,
      agrees: 'yes',
      why: 'rounded',
      source: 'book',
      at: 'p. 1',
      known: 'read',
      note: 'Mind',
    });
  });
  it('leaves empty what is not there, and writes words and yes or no as text', () => {
    const computed = (value: unknown) =>
      rowsOf(checksTable([{ check, computed: { value }, agrees: false }]))[0]?.computed;
    expect([undefined, null, 0, true, 'flat'].map(computed)).toEqual([
      undefined,
      undefined,
      0,
      'true',
      'flat',
    ]);
    const [refused] = rowsOf(
      checksTable([{ check: { ...check, refuses: 'width' }, agrees: false }]),
    );
    expect(refused).toMatchObject({ 'refused input': 'width', agrees: 'no', computed: undefined });
    expect(refused).toMatchObject({ unit: undefined, why: undefined, difference: undefined });
  });
});

it('a table is its column names and its rows, as text', () => {
  const table = publishedTable(
    't',
    'Two.',
    [1, 2],
    [
      { name: 'one', holds: 'It.', cell: (row) => row },
      { name: 'double', holds: 'Twice.', cell: (row) => 2 * row },
    ],
  );
  expect(table.columns).toEqual([
    { name: 'one', holds: 'It.' },
    { name: 'double', holds: 'Twice.' },
  ]);
  expect(tableAsCsv(table)).toBe('\uFEFFone,double\r\n1,2\r\n2,4\r\n');
});

const valid = (name: keyof typeof schemas, data: unknown) =>
  new Ajv({ strict: true, allErrors: true }).compile(schemas[name])(data);

describe('the course as one file', () => {
  it('holds lessons and exercises under the names of its schema', () => {
    const file = JSON.parse(JSON.stringify(curriculumFile(course(), '1.2.3')));
    expect(file.course).toMatchObject({ edition: '1.2.3', language: 'en-US' });
    expect(file.units).toEqual([{ id: 'all', title: 'All', lessons: ['gate', 'bead', 'groove'] }]);
    expect(
      file.lessons.map(({ number, id }: { number: number; id: string }) => [number, id]),
    ).toEqual([
      [1, 'gate'],
      [2, 'bead'],
      [3, 'groove'],
    ]);
    const text = (one: unknown) => JSON.parse(plain(JSON.stringify(one)));
    expect(text(file.lessons[1])).toEqual({
      id: 'bead',
      number: 2,
      title: 'bead',
      unit: 'all',
      readingMinutes: 25,
      boothHours: 3,
      positions: ['flat', 'horizontal'],
      joints: ['bead'],
      electrodes: [
        { classification: 'E7018', diameter: '1/8 in' },
        { classification: 'E6010', diameter: '3/32 in' },
      ],
      skills: [
        { id: 'do-bead', learnerCan: 'Run a bead of 1/4 in' },
        { id: 'look', learnerCan: 'Look' },
      ],
      terms: [{ term: 'pool', definition: 'Melt over 1/8 in wide' }],
      needs: ['do-gate'],
      calculations: ['travel-speed'],
      exercises: ['try-bead'],
      hazards: ['noise', 'grinding'],
      sources: [{ source: 'book', at: 'p. 3', known: 'read', for: 'Beads' }],
    });
    expect(text(file.exercises[1])).toEqual({
      id: 'try-bead',
      title: 'Bead',
      lesson: 'bead',
      station: 'booth',
      positions: ['flat'],
      joints: ['bead'],
      electrodes: [{ classification: 'E7018', diameter: '1/8 in' }],
      minutes: 50,
      attempts: 3,
      practices: ['do-bead', 'look'],
      assesses: ['do-bead'],
      acceptance: [
        {
          item: 'leg of 1/4 in',
          limit: 'At least 1/4 in',
          source: 'book',
          at: 'p. 1',
          known: 'memory',
        },
        { item: 'looks', limit: 'Even', known: 'practice' },
      ],
    });
    expect(valid('curriculum', file)).toBe(true);
  });

  it('tells of each rule how often it was looked for, and where it is broken', () => {
    const { rules } = curriculumFile({ ...sound, unplaced: ['stray'] }, '1');
    expect(rules.find(({ id }) => id === 'reachable-in-order')).toMatchObject({
      lookedAt: 4,
      broken: ['stray has no place in the order'],
    });
    expect(rules.find(({ id }) => id === 'hours-add-up')).toMatchObject({
      lookedAt: 3,
      broken: [],
    });
  });
});

describe('the schemas', () => {
  const file = () => JSON.parse(JSON.stringify(curriculumFile(sound, '1')));
  it('take no field that they do not name, at any depth', () => {
    expect(valid('curriculum', file())).toBe(true);
    const [top, lesson, point, acceptance] = [file(), file(), file(), file()];
    top.more = 1;
    lesson.lessons[0].more = 1;
    point.exercises[0].electrodes = [{ classification: 'E7018', diameter: '1/8 in', more: 1 }];
    acceptance.exercises[0].acceptance[0].more = 1;
    for (const one of [top, lesson, point, acceptance])
      expect(valid('curriculum', one)).toBe(false);
  });
  it('want every field but those that may be missing', () => {
    const { course: _, ...without } = file();
    expect(valid('curriculum', without)).toBe(false);
    const bare = file();
    delete bare.exercises[0].acceptance[0].source;
    expect(valid('curriculum', bare)).toBe(true);
    delete bare.exercises[0].acceptance[0].known;
    expect(valid('curriculum', bare)).toBe(false);
  });
  it('know a calculation by what it must have, and by nothing else', () => {
    const one = {
      id: 'heat-input',
      kind: 'formula',
      title: 'T',
      summary: 'S',
      inputs: { voltage: { label: 'V', more: 1 } },
      outputs: {},
      beware: [],
      sources: [{ source: 'book', known: 'read' }],
    };
    const of = (change: object) =>
      valid('calculations', { version: 1, calculations: [{ ...one, ...change }] });
    expect(of({})).toBe(true);
    expect(of({ constants: {} })).toBe(true);
    for (const wrong of [
      { more: 1 },
      { kind: 'other' },
      { inputs: { a: {} } },
      { id: 'Heat Input' },
    ])
      expect(of(wrong)).toBe(false);
    expect(valid('tables', { version: 1, tables: [] })).toBe(true);
    expect(valid('tables', { version: 2, tables: [] })).toBe(false);
  });
});

it('the publications are items of a reference manager, each with what it is', () => {
  const items = JSON.parse(JSON.stringify(sourcesFile()));
  expect(items.map(({ id }: { id: string }) => id)).toEqual(Object.keys(sources));
  expect(items[0]).toEqual({
    id: 'aws-d1.1',
    type: 'standard',
    title: 'AWS D1.1/D1.1M, Structural Welding Code: Steel',
    publisher: 'American Welding Society',
    edition: '2000 to 2020; the edition is named with each value',
    note: 'the structural welding code for steel buildings',
  });
  expect(items.find(({ id }: { id: string }) => id === 'geometry')).not.toHaveProperty('edition');
  expect(valid('sources', items)).toBe(true);
});
