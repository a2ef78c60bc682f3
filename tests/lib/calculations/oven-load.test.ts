import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import ovenLoad from '../../../lib/calculations/oven-load.ts';

const evening = {
  classification: 'E7018',
  designator: 'none',
  booths: 14,
  perHour: 6,
  firstArc: 18.25,
  lastArc: 21,
  issueEvery: 1,
  spare: 0,
  electrodesPerContainer: 140,
  inOven: 0,
  ovenHolds: 560,
} as const;

describe('oven-load', () => {
  it('issues enough for every hour and booth, and never a whole electrode too many to a booth', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.double({ min: 0.1, max: 12, noNaN: true }),
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 0, max: 40 }),
        (booths, perHour, quarters, spare) => {
          const lastArc = 18 + quarters / 4;
          const { electrodes, issues, containers, left } = ovenLoad.compute({
            ...evening,
            booths,
            perHour,
            spare,
            firstArc: 18,
            lastArc,
          });
          const needed = booths * perHour * (lastArc - 18) * (1 + spare / 100);
          expect(electrodes).toBeGreaterThanOrEqual(needed - 1e-6);
          expect(electrodes).toBeLessThan(needed + booths * issues.length + 1e-6);
          expect(left).toBeGreaterThanOrEqual(0);
          expect(left).toBeLessThan(evening.electrodesPerContainer);
          expect(containers * evening.electrodesPerContainer).toBe(electrodes + left);
        },
      ),
    );
  });

  it('says when the oven is too small', () => {
    const { fits, because } = ovenLoad.compute({ ...evening, ovenHolds: 200 });
    expect(fits).toBe(false);
    expect(because.map(({ text }) => text).join(' ')).toContain('Keep the last containers sealed');
    expect(ovenLoad.compute({ ...evening, ovenHolds: 280 }).fits).toBe(true);
  });

  it.each([
    ['an evening that ends before it starts', { lastArc: '18:00' }, 'lastArc'],
    ['an issue for longer than they may be out', { issueEvery: '5' }, 'issueEvery'],
    ['half a booth', { booths: '2.5' }, 'booths'],
  ])('refuses %s', (_, change, field) => {
    const typed = Object.fromEntries(
      Object.entries({ ...evening, ...change }).map(([name, value]) => [name, String(value)]),
    );
    expect(answer(ovenLoad, typed)).toMatchObject({ ok: false, problems: [{ field }] });
  });
});
