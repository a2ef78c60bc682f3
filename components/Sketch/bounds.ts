import type { Bounds, Point } from './scale.ts';

/** The box round points, in millimeters. */
export function boundsOf(points: readonly Point[]): Bounds {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    bottom: Math.min(...ys),
    top: Math.max(...ys),
  };
}
