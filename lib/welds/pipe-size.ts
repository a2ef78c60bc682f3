/** The printed sizes of a pipe. Throws NoAnswer where the standard has no such schedule. */
import { NoAnswer } from '../no-answer.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import { type Nps, pipeRows, type Schedule } from '../tables/pipe-b36.10.ts';

/** Outside diameter and wall, in inches and in millimeters. */
export function pipeSize(
  nps: Nps,
  schedule: Schedule,
): { outside: PrintedFigure; wall: PrintedFigure } {
  const { outside, walls } = pipeRows[nps];
  const wall = walls[schedule];
  if (!wall)
    throw new NoAnswer(
      `NPS ${nps} has no schedule ${schedule} in ASME B36.10M, though some shop tables print one; there are ${Object.keys(walls).join(', ')}`,
      'schedule',
    );
  return {
    outside: { us: outside[0], metric: outside[1] },
    wall: { us: wall[0], metric: wall[1] },
  };
}

/** Pounds a foot of pipe weighs, by the formula of ASME B36.10M; inches. */
export const poundsPerFoot = (outside: number, wall: number): number =>
  10.68 * (outside - wall) * wall;
