/** A balance of masses, in grams; the shares that most boxes give are from memory. */
import { describe, expect, it } from 'vitest';
import weighIn from '../../../lib/calculations/weigh-in.ts';

const box = { rods: 10, rodsMass: 250, stubsMass: 50, couponBefore: 1000 };
const weighed = (couponAfter: number) => weighIn.compute({ ...box, couponAfter });
const said = (couponAfter: number, rods = 10) =>
  (weighIn.notes?.({ ...box, rods, couponAfter } as never, weighed(couponAfter)) ?? [])
    .map(({ kind, text }) => `${kind}: ${text}`)
    .join('\n');

describe('weigh-in', () => {
  it('finds what the plate gained, of what melted, of what was bought, and of each electrode', () => {
    expect(weighed(1140)).toEqual({
      deposit: 140,
      depositionEfficiency: 0.7,
      electrodeYield: 0.56,
      depositPerRod: 14,
    });
  });

  it('lets the plate gain all that melted, and no more; and more than nothing', () => {
    expect(weighed(1200).depositionEfficiency).toBe(1);
    expect(() => weighed(1200.1)).toThrow(expect.objectContaining({ field: 'couponAfter' }));
    expect(() => weighed(1000)).toThrow(/gained nothing/);
    expect(() => weighIn.compute({ ...box, stubsMass: 250, couponAfter: 1100 })).toThrow(
      expect.objectContaining({ field: 'stubsMass' }),
    );
  });

  it('doubts a share outside 0.55 to 0.80, ends included', () => {
    const doubted = (couponAfter: number) => said(couponAfter).includes('caution: Most boxes');
    expect([1109.9, 1110, 1160, 1160.1].map(doubted)).toEqual([true, false, false, true]);
  });

  it('says what two readings of a gram leave in doubt, at least one in a hundred', () => {
    // 2 g of 25 g are 8 %, of 140 g 1.4 %, of 199 g 1.0 %.
    expect(said(1025)).toContain('about 8 % of doubt in 10 electrodes');
    expect(said(1140)).toContain('about 1 % of doubt');
    expect(said(1199, 1)).toContain('about 1 % of doubt in one electrode');
  });
});
