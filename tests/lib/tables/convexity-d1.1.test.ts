/** AWS D1.1 weld profiles: Figure 5.4 (2000), Table 5.10 (2015), 7.9 (2020), from memory. */
import { describe, expect, it } from 'vitest';
import { convexityLimits, faceRow, faceRowTexts } from '../../../lib/tables/convexity-d1.1.ts';
import { printFraction } from '../../../lib/text/inches.ts';

describe('the face of a fillet', () => {
  it.each([
    [0.1, 1, 'narrow'],
    [5 / 16, 8, 'narrow'],
    [0.3126, 8.01, 'middle'],
    [0.9999, 24.99, 'middle'],
    [1, 25, 'wide'],
    [3, 75, 'wide'],
  ])('of %f in or %f mm is %s', (inches, millimeters, row) => {
    expect(faceRow(inches, 'us')).toBe(row);
    expect(faceRow(millimeters, 'metric')).toBe(row);
  });

  it.each([
    ['narrow', 1 / 16, 2, 'up to {5/16 in|8 mm} wide'],
    ['middle', 1 / 8, 3, 'over {5/16 in|8 mm} and under {1 in|25 mm} wide'],
    ['wide', 3 / 16, 5, '{1 in|25 mm} wide or more'],
  ] as const)(
    'may bulge in the %s row %f in or %f mm, and the sentence says so',
    (row, us, metric, faces) => {
      expect(convexityLimits[row]).toEqual({ us, metric });
      expect(faceRowTexts[row]).toBe(
        `faces ${faces} may bulge {${printFraction(us, 16)} in|${metric} mm}`,
      );
    },
  );
});
