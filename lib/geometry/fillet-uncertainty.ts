/**
 * How far readings of a section move when every mark may lie a little off. Each coordinate of each
 * mark is moved to both sides by the marking error and the readings are taken again; the moves are
 * independent, so their squares add up (law of propagation of uncertainty).
 */
import { type FilletMarks, type FilletReadings, readFillet } from './etched-fillet.ts';
import type { Point } from './outline.ts';

export type Readings = Readonly<Partial<Record<keyof FilletReadings, number>>>;

/** Standard uncertainties in the picture's units, for a standard marking error in each coordinate. */
export function filletUncertainty(marks: FilletMarks, markingError: number): Readings {
  const squares: Partial<Record<keyof FilletReadings, number>> = {};
  for (const moved of movedMarks(marks, markingError)) {
    const [ahead, behind] = [readFillet(moved(1)), readFillet(moved(-1))];
    for (const name of Object.keys(ahead) as (keyof FilletReadings)[]) {
      const half = ((ahead[name] ?? Number.NaN) - (behind[name] ?? Number.NaN)) / 2;
      if (!Number.isNaN(half)) squares[name] = (squares[name] ?? 0) + half ** 2;
    }
  }
  return Object.fromEntries(
    Object.entries(squares).map(([name, square]) => [name, Math.sqrt(square)]),
  );
}

type Moved = (sign: 1 | -1) => FilletMarks;

/** The marks with one coordinate of one of them moved, for every coordinate in turn. */
function* movedMarks(marks: FilletMarks, by: number): Generator<Moved> {
  for (const axis of [0, 1] as const) {
    const shift = ([x, y]: Point, sign: number): Point =>
      axis === 0 ? [x + sign * by, y] : [x, y + sign * by];
    for (const name of ['root', 'toeA', 'toeB'] as const)
      yield (sign) => ({ ...marks, [name]: shift(marks[name], sign) });
    for (const name of ['face', 'fusion', 'plateA', 'plateB'] as const)
      for (const index of marks[name].keys())
        yield (sign) => ({
          ...marks,
          [name]: marks[name].map((point, i) => (i === index ? shift(point, sign) : point)),
        });
  }
}
