/** Graded coupons as a table: a row for each point, so that one learner or a class is read alike. */
import type { SheetPoint } from '../booth/exercise-sheet.ts';
import { readCsv, writeCsv } from '../csv.ts';
import type { GradedCoupon, GradedExercise } from '../files/grading-book.ts';
import { quoted } from '../text/quoted.ts';
import { speak } from '../text/say.ts';
import type { System } from '../units.ts';
import { grade } from './grade.ts';

const read = [
  'exercise',
  'learner',
  'attempt',
  'date',
  'grader',
  'item',
  'reading',
  'note',
] as const;
const written = [...read.slice(0, 7), 'verdict', 'reason', 'weight', 'total', 'result', 'note'];

/**
 * What `readGrading` reads again; verdict, reason, weight and total are for the eye.
 * @param slug of the exercise
 */
export function writeGrading(
  slug: string,
  points: readonly SheetPoint[],
  { rubric, coupons }: GradedExercise,
  system: System,
): string {
  return writeCsv(
    written,
    coupons.flatMap((coupon) => {
      const verdict = grade(points, coupon.readings, rubric, system);
      return verdict.points.map(({ item, result, reason, weight, looser }) => [
        slug,
        coupon.learner,
        coupon.attempt,
        coupon.on,
        coupon.grader,
        item,
        coupon.readings[item] ?? '',
        result,
        speak([reason, looser].filter(Boolean).join('. '), system),
        weight,
        verdict.total === undefined ? undefined : Math.round(verdict.total),
        verdict.result,
        coupon.note,
      ]);
    }),
  );
}

export type GradingRead =
  | { ok: true; coupons: GradedCoupon[]; notes: string[] }
  | { ok: false; problem: string };

const most = 5000;

/** Reads coupons of the exercise `slug`; rows that do not fit are left out and told. */
export function readGrading(
  text: string,
  slug: string,
  points: readonly SheetPoint[],
): GradingRead {
  const table = readCsv(text, read);
  if (!table.ok) return table;
  if (table.rows.length > most)
    return {
      ok: false,
      problem: `This table has more than ${most} rows; open one class at a time`,
    };
  const coupons = new Map<string, GradedCoupon>();
  const items = new Set(points.map(({ item }) => item));
  const notes: string[] = [];
  let elsewhere = 0;
  for (const [index, row] of table.rows.entries()) {
    const cell = (name: (typeof read)[number], longest = 200) => row[name].slice(0, longest);
    if (cell('exercise') !== slug) {
      elsewhere += 1;
      continue;
    }
    const item = cell('item');
    if (cell('learner') === '') notes.push(`Row ${index + 2} names no learner and was left out`);
    else if (!items.has(item))
      notes.push(`Row ${index + 2}: ${quoted(item)} is no point of this exercise; it was left out`);
    else {
      const key = `${cell('learner')}\n${cell('attempt')}`;
      const coupon = coupons.get(key) ?? {
        learner: cell('learner'),
        attempt: cell('attempt'),
        on: cell('date'),
        grader: cell('grader'),
        note: cell('note', 2000),
        readings: {},
      };
      coupons.set(key, coupon);
      if (cell('reading') !== '') coupon.readings[item] = cell('reading');
    }
  }
  if (elsewhere > 0)
    notes.unshift(
      `${elsewhere} ${elsewhere === 1 ? 'row belongs' : 'rows belong'} to other exercises and stayed out`,
    );
  if (coupons.size === 0)
    return {
      ok: false,
      problem: ['No coupon of this exercise stands in this table', ...notes].join('. '),
    };
  return { ok: true, coupons: [...coupons.values()], notes };
}

/** Puts read coupons among those there; the same learner and attempt is replaced. */
export function merged(
  there: readonly GradedCoupon[],
  read: readonly GradedCoupon[],
): GradedCoupon[] {
  const same = (a: GradedCoupon, b: GradedCoupon) =>
    a.learner === b.learner && a.attempt === b.attempt;
  return [...there.filter((one) => !read.some((other) => same(one, other))), ...read];
}
