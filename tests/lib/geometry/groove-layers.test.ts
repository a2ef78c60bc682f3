import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beadsByLayer, grooveLayers } from '../../../lib/geometry/groove-layers.ts';

const length = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('grooveLayers', () => {
  const depths = fc.record({
    depth: length(0.02, 12),
    rootPassThickness: length(0.03, 0.5),
    fillPassThickness: length(0.03, 0.1875),
    coverLimit: fc.constant(0.1875),
    capHeight: length(0, 0.25),
  });

  it('keeps every layer within its thickness, and takes no layer more than that needs', () => {
    fc.assert(
      fc.property(depths, (given) => {
        const heights = grooveLayers(given);
        const { depth, rootPassThickness: root, fillPassThickness: fill } = given;
        const thick = heights.map((height, i) => height - (heights[i - 1] ?? 0));
        expect(heights.at(-1)).toBeCloseTo(depth, 12);
        expect(thick[0]).toBeCloseTo(Math.min(depth, root), 12);
        for (const each of thick.slice(1)) {
          expect(each).toBeGreaterThan(0);
          expect(each).toBeLessThanOrEqual(fill + 1e-9);
        }
        if (thick.length === 1) return;
        const crownMean = (2 / 3) * given.capHeight;
        expect((thick.at(-1) as number) + crownMean).toBeLessThanOrEqual(0.1875 + 1e-9);
        const mostWithOneLess =
          thick.length === 2
            ? root
            : root + (thick.length - 3) * fill + Math.min(fill, 0.1875 - crownMean);
        expect(depth).toBeGreaterThan(mostWithOneLess);
      }),
    );
  });

  it('divides 7/8 in above a 1/8 in root pass into seven layers of 1/8 in', () => {
    const heights = grooveLayers({
      depth: 1,
      rootPassThickness: 0.125,
      fillPassThickness: 0.125,
      coverLimit: 0.1875,
      capHeight: 0.09375,
    });
    expect(heights).toEqual([1, 2, 3, 4, 5, 6, 7, 8].map((eighths) => eighths / 8));
  });

  it('takes from the cover what a tall crown adds to it', () => {
    const heights = grooveLayers({
      depth: 0.5,
      rootPassThickness: 0.125,
      fillPassThickness: 0.16,
      coverLimit: 0.1875,
      capHeight: 0.12,
    });
    expect(heights).toHaveLength(4);
    expect((heights[3] as number) - (heights[2] as number)).toBeCloseTo(0.1875 - 0.08, 12);
    expect((heights[2] as number) - (heights[1] as number)).toBeCloseTo((0.375 - 0.1075) / 2, 12);
  });
});

/** Every way to give so many passes to layers, at least one to each. */
function* shares(passes: number, layers: number): Generator<number[]> {
  if (layers === 1) {
    yield [passes];
    return;
  }
  for (let beads = 1; beads <= passes - layers + 1; beads++)
    for (const rest of shares(passes - beads, layers - 1)) yield [beads, ...rest];
}

describe('beadsByLayer', () => {
  it('makes the largest pass as small as it can be (every way tried)', () => {
    fc.assert(
      fc.property(
        fc.array(length(0.001, 1), { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 0, max: 7 }),
        (areas, more) => {
          const largest = (beads: number[]) =>
            Math.max(...beads.map((count, layer) => (areas[layer] as number) / count));
          const beads = beadsByLayer(areas, areas.length + more, false);
          expect(beads.reduce((sum, count) => sum + count, 0)).toBe(areas.length + more);
          const best = Math.min(...[...shares(areas.length + more, areas.length)].map(largest));
          expect(largest(beads)).toBeCloseTo(best, 9);
        },
      ),
    );
  });

  it('gives the upper of equal layers more', () => {
    expect(beadsByLayer([1, 1, 1, 1], 6, false)).toEqual([1, 1, 2, 2]);
  });

  it('keeps a single root pass where it must', () => {
    expect(beadsByLayer([5, 1, 1], 6, true)).toEqual([1, 2, 3]);
    expect(beadsByLayer([5], 6, true)).toEqual([1]);
  });
});
