/** Judges the readings of one coupon against the limits of its exercise: point by point, then in all. */
import type { SheetPoint } from '../booth/exercise-sheet.ts';
import { printReading } from '../text/print-reading.ts';
import { readQuantity } from '../text/quantity-text.ts';
import { quoted } from '../text/quoted.ts';
import { convert, type System, unitFor } from '../units.ts';
import { type Bound, boundOf } from './limit-bound.ts';
import { limitSense, type Sense } from './limit-sense.ts';
import { byEye, type Rubric, rubricOf } from './rubric.ts';

export type Result = 'passed' | 'missed' | 'open' | 'unread';

export interface PointVerdict {
  item: string;
  result: Result;
  /** Why, as a sentence; quantities in braces. */
  reason: string;
  weight: number;
  must: boolean;
  /** Which way a reading is held against its limit; none where the eye decides. */
  sense: Sense | undefined;
  /** Set where the shop's own limit is looser than the exercise's: said wherever the verdict is. */
  looser?: string;
}

export interface Verdict {
  points: PointVerdict[];
  /** Percent of the weights that passed; undefined where no point has weight. */
  total: number | undefined;
  result: 'waiting' | 'passed' | 'repeat';
  reason: string;
}

/** @param readings by item: quantities parted by semicolons, or `pass` and `repeat` */
export function grade(
  points: readonly SheetPoint[],
  readings: Readonly<Record<string, string>>,
  rubric: Rubric,
  system: System,
): Verdict {
  const judged = points.map((point) => judge(point, readings[point.item] ?? '', rubric, system));
  const weight = judged.reduce((sum, it) => sum + it.weight, 0);
  const won = judged.reduce((sum, it) => sum + (it.result === 'passed' ? it.weight : 0), 0);
  const total = weight > 0 ? (100 * won) / weight : undefined;
  const { result, reason } = inAll(judged, total, rubric.passMark);
  const looser = judged.filter((it) => it.looser).map(({ item }) => item);
  const said =
    looser.length > 0 ? `. Judged by looser limits than the source: ${looser.join(', ')}` : '';
  return { points: judged, total, result, reason: reason + said };
}

function inAll(
  judged: readonly PointVerdict[],
  total: number | undefined,
  passMark: number,
): Pick<Verdict, 'result' | 'reason'> {
  const missed = judged.filter(({ result, must }) => result === 'missed' && must);
  if (missed.length > 0)
    return { result: 'repeat', reason: `Missed: ${missed.map(({ item }) => item).join(', ')}` };
  const open = judged.filter(({ result }) => result === 'open' || result === 'unread');
  if (open.length > 0)
    return { result: 'waiting', reason: `Still open: ${open.map(({ item }) => item).join(', ')}` };
  if (total !== undefined && total < passMark)
    return { result: 'repeat', reason: `The total is under the pass mark of ${passMark} %` };
  return { result: 'passed', reason: 'Every point that must pass has passed' };
}

function judge(point: SheetPoint, text: string, rubric: Rubric, system: System): PointVerdict {
  const { weight, must, limit } = rubricOf(rubric, point.item);
  const sense = limitSense(point);
  const shared = { item: point.item, weight, must, sense };
  const typed = text.trim();
  const eye = eyeOf(typed);
  if (eye)
    return {
      ...shared,
      result: eye,
      reason: eye === 'passed' ? 'Seen and good' : `Seen, and not this: ${lower(point.limit)}`,
    };
  if (typed === '') return { ...shared, result: 'open', reason: 'Nothing written yet' };
  if (!sense)
    return {
      ...shared,
      result: 'unread',
      reason: `Write ${byEye.yes} or ${byEye.no}, not ${quoted(typed)}`,
    };
  const bound = boundOf(point, limit, sense, system);
  if ('problem' in bound) return { ...shared, result: 'unread', reason: bound.problem };
  return { ...shared, ...measured(typed, sense, bound, system) };
}

const eyeOf = (text: string): 'passed' | 'missed' | undefined => {
  if (/^(pass|passed|yes|ok|good|x)$/i.test(text)) return 'passed';
  return /^(repeat|fail|failed|no|missed)$/i.test(text) ? 'missed' : undefined;
};

function measured(
  typed: string,
  sense: Sense,
  bound: Bound,
  system: System,
): Pick<PointVerdict, 'result' | 'reason' | 'looser'> {
  const readings: number[] = [];
  for (const one of typed.split(';').filter((part) => part.trim() !== '')) {
    const read = readQuantity(one, unitFor(bound.unit, system));
    if ('problem' in read) return { result: 'unread', reason: `The reading ${read.problem}` };
    const value = convert(read.value, read.unit, bound.unit);
    if (value < 0) return { result: 'unread', reason: 'A reading must not be negative' };
    readings.push(value);
  }
  if (readings.length === 0) return { result: 'open', reason: 'Nothing written yet' };
  const worst = sense === 'at least' ? Math.min(...readings) : Math.max(...readings);
  // Sizes are typed in either system; a billionth of one is no difference that a gauge knows.
  const near = 1e-9 * Math.max(1, Math.abs(bound.value));
  const good = sense === 'at least' ? worst >= bound.value - near : worst <= bound.value + near;
  const shown = `{${plain(worst, bound, system)}}`;
  const which =
    readings.length === 1
      ? 'Read'
      : `The ${sense === 'at least' ? 'least' : 'most'} of ${readings.length} readings is`;
  return {
    result: good ? 'passed' : 'missed',
    reason: `${which} ${shown}; ${sense} ${bound.text} is asked`,
    ...(bound.looser && { looser: bound.looser }),
  };
}

/** A reading in the reader's unit, as our own sentences hold it. */
function plain(value: number, bound: Bound, system: System): string {
  const { unit } = bound;
  const to = unitFor(unit, system);
  const text = printReading(convert(value, unit, to), to, convert(bound.value, unit, to));
  return `${text.replace(/[^−\d./-].*$/s, '')} ${to}`;
}

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
