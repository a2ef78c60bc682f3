import { describe, expect, it } from 'vitest';
import convexityLimit from '../../../lib/calculations/convexity-limit.ts';

describe('convexity-limit', () => {
  it.each([
    [0.2, 'us'],
    [5, 'metric'],
  ] as const)('holds the printed pair of a narrow face, %d %s', (value, system) => {
    const { convexityLimit: limit } = convexityLimit.compute({ faceWidth: { value, system } });
    expect(limit).toEqual({ us: 1 / 16, metric: 2 });
  });

  it('holds the printed pair of a wide face', () => {
    const wide = convexityLimit.compute({ faceWidth: { value: 1.5, system: 'us' } });
    expect(wide.convexityLimit).toEqual({ us: 3 / 16, metric: 5 });
  });

  it('shows the row used, the two passed over, and both figures as printed', () => {
    const found = convexityLimit.compute({ faceWidth: { value: 10, system: 'metric' } });
    expect(found.convexityLimit).toEqual({ us: 1 / 8, metric: 3 });
    expect(found.because.map(({ kind }) => kind)).toEqual(['row', 'passed', 'passed']);
    expect(found.because[0]?.text).toContain('{1/8 in|3 mm}');
  });
});
