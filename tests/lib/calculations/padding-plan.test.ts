import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import paddingPlan from '../../../lib/calculations/padding-plan.ts';

const pad = fc.record({
  width: fc.double({ min: 0.1, max: 1, noNaN: true }),
  height: fc.double({ min: 0.03, max: 0.2, noNaN: true }),
  overlap: fc.double({ min: 0, max: 80, noNaN: true }),
  plateWidth: fc.double({ min: 1, max: 24, noNaN: true }),
  plateLength: fc.double({ min: 1, max: 24, noNaN: true }),
  runOut: fc.double({ min: 1, max: 20, noNaN: true }),
});

describe('padding-plan', () => {
  it('lays beads one by one until the far edge is covered', () => {
    fc.assert(
      fc.property(pad, (given) => {
        const { beads, pitch } = paddingPlan.compute(given);
        const { width, overlap, plateWidth } = given;
        const step = width * (1 - overlap / 100);
        // Where a toe meets the edge to a hair, rounding decides; both counts cover the plate.
        const laps = (plateWidth - width) / step;
        fc.pre(Math.abs(laps - Math.round(laps)) > 1e-6 || laps % 1 === 0);
        let laid = 1;
        for (let toe = width; toe < plateWidth * (1 - 1e-12); toe = width + (laid - 1) * step)
          laid++;
        expect(beads).toBe(laid);
        if (pitch !== undefined) {
          expect(pitch).toBeLessThanOrEqual(width * (1 - overlap / 100) * (1 + 1e-8));
          expect((beads - 1) * pitch + width).toBeCloseTo(plateWidth, 9);
        }
      }),
    );
  });

  it('covers a plate as wide as one bead with one, however the width was converted', () => {
    const one = { width: 0.1, height: 0.05, overlap: 50, plateWidth: 0.1 - 5e-11 };
    expect(paddingPlan.compute({ ...one, plateLength: 8, runOut: 8 })).toMatchObject({
      beads: 1,
      electrodes: 1,
      coveredWidth: 0.1,
    });
  });

  it('brings enough electrodes, and not one more', () => {
    fc.assert(
      fc.property(pad, (given) => {
        const { beads, beadLength, electrodes } = paddingPlan.compute(given);
        expect(beadLength).toBeCloseTo(beads * given.plateLength, 9);
        expect(electrodes * given.runOut).toBeGreaterThan(beadLength * (1 - 1e-8));
        expect((electrodes - 1) * given.runOut).toBeLessThan(beadLength);
      }),
    );
  });

  it('spreads all the metal over the width it covers', () => {
    fc.assert(
      fc.property(pad, (given) => {
        const { beads, layerHeight, coveredWidth } = paddingPlan.compute(given);
        const metal = (beads * 2 * given.width * given.height) / 3;
        expect(layerHeight * coveredWidth).toBeCloseTo(metal, 9);
      }),
    );
  });

  it('tells the overlap and the valley of the evened spacing', () => {
    fc.assert(
      fc.property(pad, (given) => {
        const { pitch, evenedOverlap, valleyDepth } = paddingPlan.compute(given);
        if (pitch === undefined || evenedOverlap === undefined) return;
        expect(given.width - (given.width * evenedOverlap) / 100).toBeCloseTo(pitch, 9);
        const parabola = (x: number) => given.height * (1 - ((2 * x) / given.width) ** 2);
        expect(given.height - parabola(pitch / 2)).toBeCloseTo(valleyDepth ?? Number.NaN, 9);
      }),
    );
  });

  it('counts no bead twice where the steps come out even', () => {
    for (let steps = 1; steps <= 300; steps++) {
      const width = 0.3;
      const overlap = 100 / 3;
      const plateWidth = width + steps * width * (1 - overlap / 100);
      const { beads } = paddingPlan.compute({
        width,
        height: 0.08,
        overlap,
        plateWidth,
        plateLength: 8,
        runOut: 8,
      });
      expect(beads).toBe(steps + 1);
    }
  });

  it('lays a single bead on a strip of its own width, and refuses a narrower one', () => {
    const strip = (plateWidth: number) =>
      paddingPlan.compute({
        width: 0.375,
        height: 0.09,
        overlap: 50,
        plateWidth,
        plateLength: 8,
        runOut: 8,
      });
    expect(strip(0.375)).toMatchObject({ beads: 1, electrodes: 1, coveredWidth: 0.375 });
    expect(strip(0.375).pitch).toBeUndefined();
    // A parabola is two thirds as high on average as in its middle.
    expect(strip(0.375).layerHeight).toBeCloseTo(0.06, 12);
    expect(strip(0.376).beads).toBe(2);
    expect(() => strip(0.374)).toThrow('narrower');
  });
});
