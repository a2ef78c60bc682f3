/** What a kept file holds at most, and what it refuses: nothing that a page writes may be refused later. */
import { describe, expect, it } from 'vitest';
import { classBoard, newLearner } from '../../../lib/files/class-board.ts';
import { classPlan } from '../../../lib/files/class-plan.ts';
import { type FileKind, readFile, writeFile } from '../../../lib/files/file-kind.ts';
import { emptyBook, gradingBook } from '../../../lib/files/grading-book.ts';
import { emptyRecord, learnerRecord } from '../../../lib/files/learner-record.ts';
import { emptyOutline, ownOutlineFile } from '../../../lib/files/own-outline-file.ts';

// biome-ignore lint/suspicious/noExplicitAny: shapes are made wrong on purpose
type Any = any;
const fits = (kind: FileKind<Any>, data: Any) =>
  readFile(kind, writeFile(kind, data, '2026-03-02')).ok;
const letters = (count: number) => 'a'.repeat(count);
const times = (count: number, one: Any) => Array.from({ length: count }, () => one);

const coupon = {
  exercise: 'flat-bead',
  on: '2026-03-02',
  result: 'waiting',
  readings: [],
  grader: '',
  note: '',
};
const record = (change: Any) => ({ ...emptyRecord(), ...change });
const lesson = (slug: string) => record({ lessonsRead: [{ lesson: slug, on: '2026-03-02' }] });
const booth = { booth: '1', machine: '', largest: 0.125, down: false };
const board = (change: Any) => ({
  name: '',
  code: 'AWS D1.1',
  learners: [],
  booths: [],
  ...change,
});
const learner = (change: Any) => board({ learners: [{ ...newLearner('7'), ...change }] });
const machine = (change: Any) => board({ booths: [{ ...booth, ...change }] });
const plan = (change: Any) => ({
  name: '',
  units: 'us',
  settings: {},
  exercises: [],
  prices: {},
  ...change,
});
const topic = { code: '', topic: '', lessons: [] };
const book = (change: Any, rubric: Any = {}) => ({
  exercises: {
    'fillet-2f': {
      rubric: { passMark: 70, points: {}, ...rubric },
      coupons: [
        { learner: '7', attempt: '1', on: '', grader: '', note: '', readings: {}, ...change },
      ],
    },
  },
});
const point = (weight: number) => ({ points: { cracks: { weight, must: true, limit: '' } } });

const rows: [what: string, kind: FileKind<Any>, fitting: Any, refused: Any][] = [
  [
    'a learner’s name',
    learnerRecord,
    record({ learner: letters(200) }),
    record({ learner: letters(201) }),
  ],
  ['a lesson’s name', learnerRecord, lesson(letters(80)), lesson(letters(81))],
  ['letters of a lesson', learnerRecord, lesson('arc-length-2'), lesson('Arc length')],
  ['a path for a lesson', learnerRecord, lesson('a'), lesson('../a')],
  ['a lesson with no name', learnerRecord, lesson('a'), lesson('')],
  [
    'a day',
    learnerRecord,
    record({ coupons: [coupon] }),
    record({ coupons: [{ ...coupon, on: '3/2/26' }] }),
  ],
  [
    'a note',
    learnerRecord,
    record({ coupons: [{ ...coupon, note: letters(2000) }] }),
    record({ coupons: [{ ...coupon, note: letters(2001) }] }),
  ],
  [
    'a result',
    learnerRecord,
    record({ coupons: [coupon] }),
    record({ coupons: [{ ...coupon, result: 'good' }] }),
  ],
  ['a board’s name', classBoard, board({ name: letters(200) }), board({ name: letters(201) })],
  [
    'a board’s learners',
    classBoard,
    board({ learners: times(500, newLearner('7')) }),
    board({ learners: times(501, newLearner('7')) }),
  ],
  [
    'a board’s booths',
    classBoard,
    board({ booths: times(500, booth) }),
    board({ booths: times(501, booth) }),
  ],
  ['a nameless learner', classBoard, learner({}), learner({ learner: '' })],
  ['no exercise set by hand', classBoard, learner({ at: '' }), learner({ at: 'Fillet 2F' })],
  ['minutes', classBoard, learner({ caughtUp: 100_000 }), learner({ caughtUp: 100_001 })],
  ['minutes below none', classBoard, learner({ caughtUp: 0 }), learner({ caughtUp: -1 })],
  ['no day yet', classBoard, learner({ tested: '' }), learner({ tested: 'soon' })],
  ['a large electrode', classBoard, machine({ largest: 1 }), machine({ largest: 1.01 })],
  ['a machine’s current', classBoard, machine({ most: 5000 }), machine({ most: 5001 })],
  ['no current', classBoard, machine({ most: 0 }), machine({ most: -1 })],
  ['an offset up', classBoard, machine({ offset: 500 }), machine({ offset: 501 })],
  ['an offset down', classBoard, machine({ offset: -500 }), machine({ offset: -501 })],
  ['a plan’s name', classPlan, plan({ name: letters(200) }), plan({ name: letters(201) })],
  [
    'a setting',
    classPlan,
    plan({ settings: { booths: letters(100) } }),
    plan({ settings: { booths: letters(101) } }),
  ],
  [
    'a plan’s exercises',
    classPlan,
    plan({ exercises: times(300, { exercise: 'a' }) }),
    plan({ exercises: times(301, { exercise: 'a' }) }),
  ],
  [
    'an exercise’s name',
    classPlan,
    plan({ exercises: [{ exercise: letters(80) }] }),
    plan({ exercises: [{ exercise: 'a/b' }] }),
  ],
  [
    'a graded learner',
    gradingBook,
    book({ learner: letters(200) }),
    book({ learner: letters(201) }),
  ],
  ['a graded note', gradingBook, book({ note: letters(2000) }), book({ note: letters(2001) })],
  ['a pass mark', gradingBook, book({}, { passMark: 100 }), book({}, { passMark: 101 })],
  ['no pass mark', gradingBook, book({}, { passMark: 0 }), book({}, { passMark: -1 })],
  ['a weight', gradingBook, book({}, point(1000)), book({}, point(1001))],
  ['no weight', gradingBook, book({}, point(0)), book({}, point(-1))],
  [
    'an outline’s text',
    ownOutlineFile,
    { name: letters(4000), topics: [] },
    { name: letters(4001), topics: [] },
  ],
  [
    'an outline’s topics',
    ownOutlineFile,
    { name: '', topics: times(500, topic) },
    { name: '', topics: times(501, topic) },
  ],
];

describe('a kept file', () => {
  it.each(rows)('holds %s, and refuses what is more than that', (_, kind, fitting, refused) => {
    expect(fits(kind, fitting)).toBe(true);
    expect(fits(kind, refused)).toBe(false);
  });

  it.each([
    ['a learner’s record', learnerRecord, emptyRecord()],
    ['a grading book', gradingBook, emptyBook()],
    ['an outline', ownOutlineFile, emptyOutline()],
  ] as [string, FileKind<Any>, Any][])('that is empty is %s', (_, kind, empty) => {
    expect(fits(kind, empty)).toBe(true);
  });

  it.each([learnerRecord, classBoard, classPlan, gradingBook, ownOutlineFile] as FileKind<Any>[])(
    'of $title has a way up from every earlier version',
    ({ version, upgrade = {} }) => {
      for (let step = 1; step < version; step++) expect(upgrade).toHaveProperty(String(step));
    },
  );
});
