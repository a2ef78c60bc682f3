import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import beadOverlap from '../../../lib/calculations/bead-overlap.ts';

/** A bead of width 1 and height 1 about x = 0; nothing beyond its toes. */
const bead = (x: number) => Math.max(0, 1 - 4 * x * x);

/** Midpoint sum of a height between two places. */
function summed(heightAt: (x: number) => number, from: number, to: number, strips = 40_000) {
  const step = (to - from) / strips;
  let area = 0;
  for (let i = 0; i < strips; i++) area += heightAt(from + (i + 0.5) * step) * step;
  return area;
}

/** Finds where a rising function crosses zero. */
function crossing(rising: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 60; i++) {
    const middle = (a + b) / 2;
    if (rising(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

const beadSize = {
  width: fc.double({ min: 0.05, max: 2, noNaN: true }),
  height: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
};

describe('bead-overlap', () => {
  it('leaves a raw valley a quarter of the bead height at half overlap', () => {
    fc.assert(
      fc.property(beadSize.width, beadSize.height, (width, height) => {
        const { valleyDepth } = beadOverlap.compute({ width, height, overlap: 50 });
        expect(valleyDepth / height).toBeCloseTo(0.25, 12);
      }),
    );
  });

  it('grows with its bead: widths with the width, heights with the height', () => {
    fc.assert(
      fc.property(beadSize.width, beadSize.height, (width, height) => {
        const found = beadOverlap.compute({ width, height, overlap: 40 });
        // Two thirds of 1 × 1 over a spacing of 0.6: 10/9 of the height.
        expect(found.pitch / width).toBeCloseTo(0.6, 12);
        expect(found.layerHeight / height).toBeCloseTo(10 / 9, 12);
        expect(found.flatTopPitch / width).toBeCloseTo(2 / 3, 12);
        // Read: 0.738 of the width.
        expect(found.tangentPitch / width).toBeCloseTo(0.738, 3);
      }),
    );
  });

  it('finds the valley between two beads where their surfaces cross', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 90, noNaN: true }), (overlap) => {
        const { pitch, valleyDepth } = beadOverlap.compute({ width: 1, height: 1, overlap });
        const meeting = crossing((x) => bead(x - pitch) - bead(x), 0, pitch);
        expect(valleyDepth).toBeCloseTo(1 - bead(meeting), 8);
      }),
    );
  });

  it('spreads the area of one bead over one step, as the sum of the surfaces does', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 90, noNaN: true }), (overlap) => {
        const { pitch, layerHeight } = beadOverlap.compute({ width: 1, height: 1, overlap });
        const all = (x: number) => {
          let total = 0;
          for (let k = -25; k <= 25; k++) total += bead(x - k * pitch);
          return total;
        };
        expect(layerHeight * pitch).toBeCloseTo(summed(all, 0, pitch, 4000), 5);
      }),
      { numRuns: 40 },
    );
  });

  it('gives a flat top where the shared area just fills the valley', () => {
    const { flatTopPitch: pitch } = beadOverlap.compute({ width: 1, height: 1, overlap: 0 });
    const shared = (x: number) => Math.min(bead(x), bead(x - pitch));
    const valley = (x: number) => 1 - Math.max(bead(x), bead(x - pitch));
    expect(summed(shared, 0, pitch)).toBeCloseTo(summed(valley, 0, pitch), 6);
  });

  /**
   * The tangent model: the line that touches the first bead and meets the second bead right above
   * the first one's toe bounds the valley; the widest spacing is the one at which the shared area
   * still fills it.
   */
  it('finds the tangent spacing by drawing the tangent and summing both areas', () => {
    const toe = 0.5;
    const unfilled = (pitch: number) => {
      const target = bead(toe - pitch);
      const tangentAt = (x0: number) => bead(x0) - 8 * x0 * (toe - x0);
      const x0 = crossing((x) => target - tangentAt(x), 0, toe);
      const line = (x: number) => bead(x0) - 8 * x0 * (x - x0);
      const valley = (x: number) => line(x) - Math.max(bead(x), bead(x - pitch));
      const shared = (x: number) => Math.min(bead(x), bead(x - pitch));
      return summed(valley, x0, toe) - summed(shared, pitch - 0.5, toe);
    };
    const widest = crossing(unfilled, 0.55, 0.95);
    const { tangentPitch } = beadOverlap.compute({ width: 1, height: 1, overlap: 0 });
    expect(tangentPitch).toBeCloseTo(widest, 6);
  });

  it('says on which side of the two spacings the beads lie', () => {
    const said = (overlap: number) => {
      const given = { width: 0.375, height: 0.09, overlap };
      return beadOverlap.notes?.(given, beadOverlap.compute(given)).map(({ text }) => text);
    };
    expect(said(20)?.join()).toContain('stays open');
    expect(said(30)?.join()).toContain('just fills');
    expect(said(50)?.join()).toContain('higher than one bead');
  });

  it('counts a spacing that just is one of the two as within it', () => {
    const said = (pitch: number) => {
      const found = { pitch, flatTopPitch: 0.25, tangentPitch: 0.28 };
      return beadOverlap.notes?.({} as never, found as never).map(({ text }) => text.slice(0, 20));
    };
    const [closer, between, wider] = [
      'Closer than the flat',
      'Between the tangent ',
      'That is wider than t',
    ];
    expect([0.25, 0.251, 0.28, 0.281].map(said)).toEqual([[closer], [between], [between], [wider]]);
  });
});
