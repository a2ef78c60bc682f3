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

  it('says nothing of room in an oven that is just full', () => {
    // 14 booths at 6 an hour for 2 3/4 hours, hour by hour: 84 + 84 + 14 × 5 = 238, so two containers.
    const full = ovenLoad.compute({ ...evening, ovenHolds: 280 });
    expect(full).toMatchObject({ electrodes: 238, containers: 2, left: 42, fits: true });
    expect(full.because.some(({ kind }) => kind === 'caution')).toBe(false);
    const over = ovenLoad.compute({ ...evening, ovenHolds: 279 });
    expect(over.because.some(({ kind }) => kind === 'caution')).toBe(true);
  });

  it('opens nothing while enough stands in the oven, and counts on from it', () => {
    const stocked = (inOven: number) => ovenLoad.compute({ ...evening, inOven });
    expect(stocked(238)).toMatchObject({ containers: 0, left: 0 });
    expect(stocked(300)).toMatchObject({ containers: 0, left: 62 });
    expect(stocked(237)).toMatchObject({ containers: 1, left: 139 });
  });

  it('wants each issue back by the hour its electrodes may be out, or by the last arc', () => {
    const { issues } = ovenLoad.compute({ ...evening, firstArc: 16, lastArc: 22, issueEvery: 2 });
    expect(issues.map(({ at, perBooth, backBy }) => [at, perBooth, backBy])).toEqual([
      ['16:00', 12, '20:00'],
      ['18:00', 12, '22:00'],
      ['20:00', 12, '22:00'],
    ]);
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
