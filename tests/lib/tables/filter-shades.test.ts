/** The rows as the regulations print them; on how they are read, see the calculation's own tests. */
import { describe, expect, it } from 'vitest';
import {
  leastShades,
  startShadesByCurrent,
  startShadesByDiameter,
} from '../../../lib/tables/filter-shades.ts';

/** As `3 to 5: 8`, in thirty-seconds of an inch or in amperes. */
const printed = (rows: readonly { from: number; to: number; shade: number; above?: true }[]) =>
  rows.map(
    ({ from, to, shade, above }) => `${above ? 'more than ' : ''}${from} to ${to}: ${shade}`,
  );

describe('filter shades', () => {
  it('of 29 CFR 1910.133(a)(5): less than 3 and 60 A 7, 3-5 and 60-160 A 8, 5-8 and 160-250 A 10, more than 8 and 250-550 A 11', () => {
    expect(printed(leastShades.byDiameter)).toEqual([
      '0 to 3: 7',
      '3 to 5: 8',
      '5 to 8: 10',
      'more than 8 to Infinity: 11',
    ]);
    expect(printed(leastShades.byCurrent)).toEqual([
      '0 to 60: 7',
      '60 to 160: 8',
      '160 to 250: 10',
      '250 to 550: 11',
    ]);
    expect(leastShades.cite).toMatchObject({ source: 'osha-1910-133', known: 'read' });
  });

  it('of 8 CCR 3382: electrodes up to 5/32 in 10, up to 1/4 in 12, up to 3/8 in 14', () => {
    expect(printed(startShadesByDiameter.rows)).toEqual([
      '0 to 5: 10',
      '5 to 8: 12',
      '8 to 12: 14',
    ]);
    expect(startShadesByDiameter.cite).toMatchObject({ source: 'cal-t8-3382', known: 'read' });
  });

  it('that ANSI Z49.1 suggests (from memory): 60 A to 160 A 10, to 250 A 12, to 550 A 14', () => {
    expect(printed(startShadesByCurrent.rows)).toEqual([
      '60 to 160: 10',
      '160 to 250: 12',
      '250 to 550: 14',
    ]);
  });
});
