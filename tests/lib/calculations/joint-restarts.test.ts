import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import jointRestarts from '../../../lib/calculations/joint-restarts.ts';

const length = fc.double({ min: 1, max: 200, noNaN: true });
const said = (jointLength: number, runOut: number, passes = 1) =>
  jointRestarts
    .compute({ jointLength, runOut, passes })
    .because.map(({ text }) => text)
    .join();

describe('joint-restarts', () => {
  it('burns electrode after electrode until the joint is full', () => {
    fc.assert(
      fc.property(length, fc.double({ min: 1, max: 20, noNaN: true }), (jointLength, runOut) => {
        const found = jointRestarts.compute({ jointLength, runOut, passes: 1 });
        let electrodes = 0;
        for (let left = jointLength; left > 1e-7; left -= runOut) electrodes++;
        expect(found.electrodesPerPass).toBe(electrodes);
        expect(found.restarts).toBe(electrodes - 1);
        expect(found.restarts * runOut + found.lastLength).toBeCloseTo(jointLength, 9);
        expect(found.evenLength).toBeLessThanOrEqual(runOut * (1 + 1e-8));
      }),
    );
  });

  it('counts no restart where the last electrode just reaches the end', () => {
    for (let electrodes = 1; electrodes <= 60; electrodes++) {
      const runOut = 190 / 25.4;
      const jointLength = (electrodes * 190) / 25.4;
      expect(jointRestarts.compute({ jointLength, runOut, passes: 1 }).restarts).toBe(
        electrodes - 1,
      );
    }
  });

  it('asks to share the length where a short end is left, and to stagger passes', () => {
    expect(said(21, 10)).toContain('Share the length');
    expect(said(22.49, 10)).toContain('Share the length');
    expect(said(22.5, 10)).not.toContain('Share the length');
    expect(said(11, 10)).toContain('Share the length');
    expect(said(1, 10)).not.toContain('Share the length');
    expect(said(20, 10, 2)).toContain('restarts lie');
    expect(said(20, 10, 1)).not.toContain('restarts lie');
    expect(said(10, 10, 2)).not.toContain('restarts lie');
  });
});
