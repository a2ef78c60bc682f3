import { describe, expect, it } from 'vitest';
import { passesFor } from '../../../lib/welds/passes-for.ts';

describe('passesFor', () => {
  it.each([
    [0.125, 0.025, 5],
    [0.125, 0.0249, 6],
    [0.125, 0.0208, 7],
    [0.3, 0.1, 3],
    [0.7, 0.1, 7],
    [0.01, 0.5, 1],
    [1e-12, 0.5, 1],
  ])('rounds %s in² of passes of %s in² up to %s', (area, passArea, passes) => {
    expect(passesFor(area, passArea)).toBe(passes);
  });
});
