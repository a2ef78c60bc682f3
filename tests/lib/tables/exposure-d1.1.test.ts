/** AWS D1.1 2015 Table 5.1 (2020 Table 7.1), column A, and clause 5.3.2 (hours of A5.5 rows from memory). */
import { describe, expect, it } from 'vitest';
import { bakeOf, exposureOf, isLowAlloy, lowAlloyRows } from '../../../lib/tables/exposure-d1.1.ts';

describe('how long an electrode may lie open', () => {
  it.each([
    ['E7018', 'none', 4, 'E70XX', 'read'],
    ['E7018', 'H4', 4, 'E70XX', 'read'],
    ['E7018', 'R', 9, 'E70XXR, E70XXHZR, E7018M', 'memory'],
    ['E7018', 'H4R', 9, 'E70XXR, E70XXHZR, E7018M', 'memory'],
    ['E7018M', 'none', 9, 'E70XXR, E70XXHZR, E7018M', 'memory'],
    ['E7016', 'H16', 4, 'E70XX', 'read'],
    ['E70XX-X', 'none', 4, 'E70XX-X', 'memory'],
    ['E80XX-X', 'none', 2, 'E80XX-X', 'memory'],
    ['E90XX-X', 'none', 1, 'E90XX-X', 'memory'],
    ['E100XX-X', 'none', 0.5, 'E100XX-X', 'memory'],
    ['E110XX-X', 'none', 0.5, 'E110XX-X', 'memory'],
  ] as const)(
    'is for %s %s %f hours, by the row %s (%s)',
    (electrode, designator, hours, row, known) => {
      expect(exposureOf(electrode, designator)).toEqual({
        hours,
        row,
        cite: { source: 'aws-d1.1', at: '2015 Table 5.1, 2020 Table 7.1, column A', known },
      });
    },
  );

  it('is followed by one bake: 500 °F to 800 °F for two hours, low-alloy 700 °F to 800 °F for one', () => {
    expect(bakeOf('E7018')).toMatchObject({
      from: { us: 500, metric: 260 },
      to: { us: 800, metric: 430 },
      hours: 2,
      times: 1,
    });
    for (const row of lowAlloyRows) {
      expect(isLowAlloy(row)).toBe(true);
      expect(bakeOf(row)).toMatchObject({
        from: { us: 700, metric: 370 },
        to: { us: 800, metric: 430 },
        hours: 1,
        times: 1,
      });
    }
    expect(isLowAlloy('E7018')).toBe(false);
  });
});
