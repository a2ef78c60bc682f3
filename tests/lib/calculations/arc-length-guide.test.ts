import { describe, expect, it } from 'vitest';
import arcLengthGuide from '../../../lib/calculations/arc-length-guide.ts';

describe('arc-length-guide', () => {
  // The core’s thickness is what makers say; three quarters of it out of position is common practice.
  it.each([
    ['flat', 1],
    ['horizontal', 1],
    ['vertical', 0.75],
    ['overhead', 0.75],
  ] as const)(
    'aims in %s at %s of the core’s thickness, and never at more than it',
    (position, share) => {
      for (const diameter of [3 / 32, 1 / 8, 5 / 32]) {
        const { longest, aim } = arcLengthGuide.compute({ diameter, position });
        expect(longest).toBe(diameter);
        expect(aim).toBe(share * diameter);
      }
    },
  );
});
