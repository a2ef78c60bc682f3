/**
 * The thicknesses and diameters that a welder's test qualifies: the shape of such a row, for both
 * codes. Figures are the printed ones of each unit system, or multiples of what was welded.
 */
import type { Citation, Printed } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';

export type Reach = PrintedFigure | 'unlimited' | 'no minimum' | 'see deposits';

export interface QualifiedSizes {
  thicknessFrom: Reach;
  thicknessTo: Reach;
  diameterFrom: Reach;
  diameterTo: Reach;
  cite: Citation;
  /** The row in words. */
  notes: string[];
  cautions?: string[];
}

/** A multiple of a size that was welded, in inches and in millimeters. */
export function timesSize({ value, system }: Printed, times: number): PrintedFigure {
  const other = system === 'us' ? value * 25.4 : value / 25.4;
  return system === 'us'
    ? { us: value * times, metric: other * times }
    : { us: other * times, metric: value * times };
}
