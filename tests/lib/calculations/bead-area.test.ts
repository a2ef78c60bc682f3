import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import beadArea from '../../../lib/calculations/bead-area.ts';

/** Midpoint sums of the height over the plate; arcs only up to the half circle. */
function summed(width: number, heightAt: (x: number) => number, strips = 20_000): number {
  const step = width / strips;
  let area = 0;
  for (let i = 0; i < strips; i++) area += heightAt(-width / 2 + (i + 0.5) * step) * step;
  return area;
}

const width = fc.double({ min: 0.1, max: 1, noNaN: true });
const share = fc.double({ min: 0.02, max: 0.5, noNaN: true });

describe('bead-area', () => {
  it('is the sum of strips under each curve', () => {
    fc.assert(
      fc.property(width, share, (w, part) => {
        const h = w * part;
        const radius = (h * h + (w * w) / 4) / (2 * h);
        const curves = {
          parabola: (x: number) => h * (1 - (4 * x * x) / (w * w)),
          cosine: (x: number) => h * Math.cos((Math.PI * x) / w),
          arc: (x: number) => Math.sqrt(Math.max(0, radius * radius - x * x)) - (radius - h),
        };
        for (const profile of ['parabola', 'cosine', 'arc'] as const) {
          const { area } = beadArea.compute({ width: w, height: h, profile });
          expect(Math.abs(area - summed(w, curves[profile])) / area).toBeLessThan(1e-4);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('meets a parabola where an arc lies flat, and never falls below it', () => {
    fc.assert(
      fc.property(width, share, (w, part) => {
        const at = (height: number, profile: 'arc' | 'parabola') =>
          beadArea.compute({ width: w, height, profile }).area;
        expect(at(w * part, 'arc')).toBeGreaterThan(at(w * part, 'parabola'));
        expect(at(w / 100, 'arc') / at(w / 100, 'parabola')).toBeCloseTo(1, 3);
      }),
    );
  });

  it('warns of a bead higher than half its width', () => {
    const warned = (height: number) =>
      beadArea.notes?.({ width: 0.4, height, profile: 'arc' }, { area: 0 }).length;
    expect(warned(0.2)).toBe(0);
    expect(warned(0.21)).toBe(1);
  });
});
