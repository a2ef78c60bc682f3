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

  // A second maker's guide (read): 1/16 in up to 3/32 in, 1/8 in for 1/8 and 5/32 in.
  it.each([
    [1 / 16, '{1/16 in} for this size.'],
    [3 / 32, '{1/16 in} for this size; the two disagree.'],
    [2.4 / 25.4, '{1/16 in} for this size; the two disagree.'],
    [1 / 8, '{1/8 in} for this size.'],
    [5 / 32, '{1/8 in} for this size; the two disagree.'],
    [4 / 25.4, '{1/8 in} for this size; the two disagree.'],
  ])('says what another maker says of %d in', (diameter, said) => {
    const { because } = arcLengthGuide.compute({ diameter, position: 'flat' });
    expect(because.map(({ kind }) => kind)).toEqual(['rule', 'rule', 'passed']);
    expect(because[2]?.text).toBe(`Another maker says ${said}`);
  });

  it.each([3 / 16, 1 / 4, 0.11])('knows no second maker for %d in', (diameter) => {
    const { because } = arcLengthGuide.compute({ diameter, position: 'overhead' });
    expect(because.map(({ kind }) => kind)).toEqual(['rule', 'rule', 'rule']);
  });
});
