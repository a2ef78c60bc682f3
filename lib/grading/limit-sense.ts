/**
 * Which way a grading limit is read: its figure is the least that passes, or the most. Points whose
 * figure is no measured reading (a setting, an answer, a place) are judged by eye.
 */
import type { SheetPoint } from '../booth/exercise-sheet.ts';

export type Sense = 'at least' | 'at most';

const least = /\bat least\s*$/i;
const most =
  /\b(?:no (?:more|deeper|higher|longer|thicker|wider) than|more than|at most|within|above|over)\s*$/i;

/** Words that tell of a question answered, a count or a place, and of no reading of the figure. */
const noReading =
  /answered|^no (?:splice|stop) within \{(?!.*even)|^even in spacing|^back to|ring test|^opening within|\bmore, no less|all round|plates at least|thickness, in every|at most \{50 mm/i;

/** The sense of a point with a figure; undefined where the eye decides. */
export function limitSense({ limit, amount, metric }: SheetPoint): Sense | undefined {
  if (amount === undefined || noReading.test(limit)) return undefined;
  const figure = metric ? `{${amount}|${metric}}` : `{${amount}}`;
  const [before, after] = limit.split(figure) as [string, string | undefined];
  if (after === undefined) return undefined;
  if (least.test(before) || after.startsWith(' or more')) return 'at least';
  return most.test(before) || after.startsWith(' at most') ? 'at most' : undefined;
}
