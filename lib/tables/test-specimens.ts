/**
 * Which specimens are cut from a welder's test: AWS D1.1:2020 Tables 6.11 (from memory) and 10.13
 * (read), ASME IX 2010 QW-452.1(a) (read) and QW-452.5 (from memory).
 */
import type { Printed } from '../calculation.ts';
import { isSmallPipe } from './qualified-sizes-d1.1.ts';
import type { Code } from './test-positions.ts';

export interface Specimen {
  specimen: string;
  count: number;
}

/** Where side bends take the place of face and root bends: at this coupon under ASME IX, above it under AWS D1.1. */
const sideBends = { us: 3 / 8, metric: 10 };

/**
 * Bend, break and macro specimens of a test such as `3G+4G`, whose positions add up. A pipe that lay
 * still while it was welded, in 5G or 6G, gives twice as many as another: it was welded in more than
 * one position. AWS D1.1 bends pipe of NPS 4 or less over face and root, whatever its wall.
 */
export function specimensOf(
  code: Code,
  test: string,
  { value, system }: Printed,
  outsideDiameter?: Printed,
): Specimen[] {
  const positions = test.split('+');
  if (/F/.test(test))
    return [
      { specimen: 'fillet break', count: positions.length },
      { specimen: 'macro-etch', count: positions.length },
    ];
  const count = positions.reduce((sum, one) => sum + (/5G|6G/.test(one) ? 2 : 1), 0);
  const limit = sideBends[system];
  const bySide =
    code === 'AWS D1.1'
      ? value > limit * 1.001 && !(outsideDiameter && isSmallPipe(outsideDiameter))
      : value >= limit;
  return bySide
    ? [{ specimen: 'side bend', count: 2 * count }]
    : [
        { specimen: 'face bend', count },
        { specimen: 'root bend', count },
      ];
}
