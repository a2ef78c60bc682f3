import type { Point } from './outline.ts';
import { distance } from './smooth-curve.ts';

export interface Ruler {
  /** Two marks on the ruler in the picture, in its own units. */
  from: Point;
  to: Point;
  /** What the ruler says between them, in millimeters, and how far that may be off. */
  length: number;
  lengthError: number;
}

/**
 * Millimeters in one unit of a picture, from a ruler that lies in it, with the standard uncertainty
 * as a share of the scale. Undefined when the two marks are one.
 */
export function rulerScale(
  { from, to, length, lengthError }: Ruler,
  markingError: number,
): { scale: number; scaleError: number } | undefined {
  const apart = distance(from, to);
  if (apart === 0) return undefined;
  const fromMarks = (Math.SQRT2 * markingError) / apart;
  return { scale: length / apart, scaleError: Math.hypot(fromMarks, lengthError / length) };
}
