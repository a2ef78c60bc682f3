/** Tables of graded coupons: out and in are inverses, and what does not fit is told. */
import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import type { SheetPoint } from '../../../lib/booth/exercise-sheet.ts';
import { readCsv } from '../../../lib/csv.ts';
import { readFile, writeFile } from '../../../lib/files/file-kind.ts';
import { emptyBook, type GradedCoupon, gradingBook } from '../../../lib/files/grading-book.ts';
import { handedIn } from '../../../lib/files/learner-record.ts';
import { grade } from '../../../lib/grading/grade.ts';
import { merged, readGrading, writeGrading } from '../../../lib/grading/grading-csv.ts';
import { handedInOf } from '../../../lib/grading/handed-in.ts';
import { standardRubric } from '../../../lib/grading/rubric.ts';

const points: SheetPoint[] = [
  { item: 'undercut', limit: 'No deeper than {1/32 in}', amount: '1/32 in', known: 'read' },
  { item: 'cracks', limit: 'None', known: 'memory' },
];
const text = fc
  .stringMatching(/^[\w;,"'= +-]{0,20}$/)
  .map((any) => any.replace(/^[\s']+/, '').trim());
const coupons: fc.Arbitrary<GradedCoupon[]> = fc.uniqueArray(
  fc.record({
    learner: fc.stringMatching(/^[A-Z]{1,2}\d{1,3}$/),
    attempt: fc.constantFrom('1', '2'),
    on: fc.constant('2026-03-02'),
    grader: text,
    note: text,
    readings: fc.record({ undercut: text, cracks: text }),
  }),
  { minLength: 1, maxLength: 8, selector: ({ learner, attempt }) => `${learner} ${attempt}` },
);
const full = (one: GradedCoupon): GradedCoupon => ({
  ...one,
  readings: Object.fromEntries(
    Object.entries(one.readings).filter(([, reading]) => reading !== ''),
  ),
});

const blank: GradedCoupon = {
  learner: '7',
  attempt: '1',
  on: '',
  grader: '',
  note: '',
  readings: {},
};

describe('a table of graded coupons', () => {
  it('gives back the coupons that were written into it', () => {
    fc.assert(
      fc.property(coupons, (some) => {
        const table = writeGrading(
          'fillet-2f',
          points,
          { rubric: standardRubric, coupons: some },
          'us',
        );
        expect(readGrading(table, 'fillet-2f', points)).toEqual({
          ok: true,
          coupons: some.map(full),
          notes: [],
        });
      }),
    );
  });
  it('says each verdict with its reason', () => {
    const coupon = {
      learner: '7',
      attempt: '1',
      on: '2026-03-02',
      grader: 'MK',
      note: '',
      readings: { undercut: '1/16', cracks: 'pass' },
    };
    const table = writeGrading('x', points, { rubric: standardRubric, coupons: [coupon] }, 'us');
    const read = readCsv(table, ['item', 'verdict', 'reason', 'total', 'result']);
    expect(read).toMatchObject({
      ok: true,
      rows: [
        { item: 'undercut', verdict: 'missed', total: '50', result: 'repeat' },
        { item: 'cracks', verdict: 'passed' },
      ],
    });
    expect(table).toContain('at most 1/32');
  });
  it('joins the reason and what is said of a looser limit', () => {
    const rubric = {
      ...standardRubric,
      points: { undercut: { weight: 1, must: true, limit: '1/16 in' } },
    };
    const coupon = { ...blank, readings: { undercut: '1/16' } };
    const table = writeGrading('x', points, { rubric, coupons: [coupon] }, 'us');
    const read = readCsv(table, ['reason', 'total']);
    const [undercut, cracks] = read.ok ? read.rows : [];
    expect(undercut?.reason).toMatch(/own limit\) is asked\. The shop’s own limit .* is looser/);
    expect(cracks?.reason).toBe('Nothing written yet');
    expect(undercut?.total).toBe('50');
  });
  it('has no total where nothing has weight', () => {
    const rubric = {
      ...standardRubric,
      points: Object.fromEntries(
        points.map(({ item }) => [item, { weight: 0, must: true, limit: '' }]),
      ),
    };
    const table = writeGrading('x', points, { rubric, coupons: [blank] }, 'us');
    const read = readCsv(table, ['total']);
    expect(read.ok && read.rows.map(({ total }) => total)).toEqual(['', '']);
  });
  it('of five thousand rows is read, a longer one refused', () => {
    const row = 'x,7,1,,,cracks,pass,\n';
    const head = 'exercise,learner,attempt,date,grader,item,reading,note\n';
    expect(readGrading(head + row.repeat(5000), 'x', points).ok).toBe(true);
    const read = readGrading(head + row.repeat(5001), 'x', points);
    expect(read.ok ? '' : read.problem).toContain('more than 5000 rows');
  });
  it('says how many rows belong elsewhere', () => {
    const head = 'exercise,learner,attempt,date,grader,item,reading,note\n';
    const read = readGrading(
      `${head}x,7,1,,,cracks,pass,\ny,7,1,,,cracks,pass,\nz,7,1,,,cracks,pass,`,
      'x',
      points,
    );
    expect(read.ok && read.notes).toEqual(['2 rows belong to other exercises and stayed out']);
  });
  it.each([
    ['', /no column/],
    ['a;b\n1;2', /no column "exercise/],
    ['exercise,learner,attempt,date,grader,item,reading,note\n', /No coupon of this exercise/],
    [
      'exercise,learner,attempt,date,grader,item,reading,note\nother,7,1,,,cracks,pass,',
      /1 row belongs to other exercises/,
    ],
  ])('%o is refused with a sentence', (table, problem) => {
    const read = readGrading(table, 'fillet-2f', points);
    expect(read.ok ? '' : read.problem).toMatch(problem);
  });
  it('keeps the good rows beside bad ones, and names the bad', () => {
    const read = readGrading(
      'exercise,learner,attempt,date,grader,item,reading,note\nx,7,1,,,cracks,pass,\nx,7,1,,,glitter,pass,\nx,,1,,,cracks,pass,',
      'x',
      points,
    );
    expect(read).toMatchObject({
      ok: true,
      coupons: [{ learner: '7', readings: { cracks: 'pass' } }],
    });
    expect(read.ok && read.notes.join()).toMatch(/Row 3: “glitter”.*Row 4 names no learner/);
  });
  it('replaces the same learner and attempt, and keeps the others', () => {
    const one = (learner: string, note: string) => ({
      learner,
      attempt: '1',
      on: '',
      grader: '',
      note,
      readings: {},
    });
    expect(merged([one('7', 'old'), one('8', 'kept')], [one('7', 'new')])).toEqual([
      one('8', 'kept'),
      one('7', 'new'),
    ]);
  });
});

describe('a graded coupon', () => {
  it('fits a learner’s record', () => {
    fc.assert(
      fc.property(coupons, fc.constantFrom('2026-03-02', 'yesterday', ''), (some, on) => {
        for (const coupon of some) {
          const verdict = grade(points, coupon.readings, standardRubric, 'us');
          const record = handedInOf('fillet-2f', { ...coupon, on }, verdict, '2026-03-09');
          expect(v.safeParse(handedIn, record).success).toBe(true);
          expect(record.on).toBe(on === '2026-03-02' ? on : '2026-03-09');
        }
      }),
    );
  });
  it('carries its readings, its note and the reason of its verdict', () => {
    const coupon = { ...blank, grader: 'MK', note: 'cold start', readings: { undercut: '1/16' } };
    const verdict = { ...grade(points, coupon.readings, standardRubric, 'us') };
    const record = handedInOf('x', coupon, verdict, '2026-03-09');
    expect(record).toMatchObject({
      exercise: 'x',
      result: 'repeat',
      readings: [{ item: 'undercut', reading: '1/16' }],
      grader: 'MK',
      note: 'cold start. Missed: undercut',
    });
    expect(handedInOf('x', { ...coupon, note: '' }, verdict, '2026-03-09').note).toBe(
      'Missed: undercut',
    );
    const long = handedInOf('x', { ...coupon, note: 'n'.repeat(3000) }, verdict, '2026-03-09');
    expect(long.note).toBe('n'.repeat(2000));
  });
  it.each(['2026-02-31x', 'x2026-03-02', '2026-13-02', '2026-3-2'])(
    'of day %s stands on today',
    (on) => {
      const verdict = grade(points, {}, standardRubric, 'us');
      expect(handedInOf('x', { ...blank, on }, verdict, '2026-03-09').on).toBe('2026-03-09');
    },
  );
  it('lies in a book that its file gives back', () => {
    fc.assert(
      fc.property(coupons, (some) => {
        const book = { exercises: { 'fillet-2f': { rubric: standardRubric, coupons: some } } };
        const read = readFile(gradingBook, writeFile(gradingBook, book, '2026-03-02'));
        expect(read).toEqual({ ok: true, data: book, saved: '2026-03-02' });
      }),
    );
    expect(readFile(gradingBook, writeFile(gradingBook, emptyBook(), '')).ok).toBe(true);
  });
});

describe('a coupon that is handed in', () => {
  const verdict = grade(points, { undercut: '1/8', cracks: 'pass' }, standardRubric, 'us');
  const on = (day: string) => handedInOf('x', { ...blank, on: day }, verdict, '2026-03-09').on;

  it('keeps a day that a calendar has, and takes today for anything else', () => {
    expect(on('2026-03-02')).toBe('2026-03-02');
    for (const other of ['', 'Monday', '2026-13-01', '02026-03-02', '2026-03-021', '2026-3-2'])
      expect(on(other)).toBe('2026-03-09');
  });

  it('names the points that were missed, and those alone', () => {
    const coupon = handedInOf('x', { ...blank, note: 'Too fast' }, verdict, '2026-03-09');
    expect(coupon).toMatchObject({ exercise: 'x', result: 'repeat', missed: ['undercut'] });
    expect(coupon.note).toBe('Too fast. Missed: undercut');
    expect(handedInOf('x', blank, verdict, '2026-03-09').note).toBe('Missed: undercut');
    const long = handedInOf('x', { ...blank, note: 'n'.repeat(3000) }, verdict, '2026-03-09');
    expect(long.note).toBe('n'.repeat(2000));
  });
});

it('a cell is cut at two hundred letters, a note at two thousand', () => {
  const table = writeGrading(
    'fillet-2f',
    points,
    {
      rubric: standardRubric,
      coupons: [{ ...blank, learner: 'L'.repeat(201), note: 'n'.repeat(2001), grader: 'TL' }],
    },
    'us',
  );
  const read = readGrading(table, 'fillet-2f', points);
  expect(read.ok && read.coupons).toEqual([
    { ...blank, learner: 'L'.repeat(200), note: 'n'.repeat(2000), grader: 'TL' },
  ]);
});

it('read coupons replace those of the same learner and attempt, and no others', () => {
  const of = (learner: string, attempt: string, grader = '') => ({
    ...blank,
    learner,
    attempt,
    grader,
  });
  const there = [of('7', '1'), of('7', '2'), of('8', '1')];
  const fresh = [of('7', '1', 'TL'), of('9', '1', 'TL')];
  expect(merged(there, fresh)).toEqual([of('7', '2'), of('8', '1'), ...fresh]);
  expect(merged(there, [])).toEqual(there);
});
