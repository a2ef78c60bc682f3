import { describe, expect, it } from 'vitest';
import convexityLimit from '../../lib/calculations/convexity-limit.ts';

describe('convexity-limit', () => {
  it('shows the row used, the two passed over, and both figures as printed', () => {
    const found = convexityLimit.compute({ faceWidth: { value: 10, system: 'metric' } });
    expect(found.convexityLimit).toEqual({ us: 1 / 8, metric: 3 });
    expect(found.because.map(({ kind }) => kind)).toEqual(['row', 'passed', 'passed']);
    expect(found.because[0]?.text).toContain('{1/8 in|3 mm}');
  });
});
