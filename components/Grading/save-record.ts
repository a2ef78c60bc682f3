import type { ExerciseSheet } from '../../lib/booth/exercise-sheet.ts';
import { writeFile } from '../../lib/files/file-kind.ts';
import type { GradedCoupon } from '../../lib/files/grading-book.ts';
import { emptyRecord, learnerRecord } from '../../lib/files/learner-record.ts';
import { grade } from '../../lib/grading/grade.ts';
import { handedInOf } from '../../lib/grading/handed-in.ts';
import type { Rubric } from '../../lib/grading/rubric.ts';
import type { System } from '../../lib/units.ts';
import { download } from '../Shelf/download.ts';

/** One learner's graded coupons as a record file, which the learner's own device can open. */
export function saveRecord(
  { slug, points }: ExerciseSheet,
  learner: string,
  rubric: Rubric,
  coupons: readonly GradedCoupon[],
  system: System,
  today: string,
): void {
  const data = {
    ...emptyRecord(),
    learner,
    coupons: coupons.map((one) =>
      handedInOf(slug, one, grade(points, one.readings, rubric, system), today),
    ),
  };
  const name = `learner-record-${learner || 'coupon'}-${slug}`.replace(/[^\w-]+/g, '_');
  download(`${name}.json`, writeFile(learnerRecord, data, today), 'application/json');
}
