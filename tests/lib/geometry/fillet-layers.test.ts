import { describe, expect, it } from 'vitest';
import { filletLayers } from '../../../lib/geometry/fillet-layers.ts';

const any = () => true;

/** Every way to stack passes on a root pass, none narrower than the layer below or a lone bead. */
function* stacks(left: number, atLeast = 2): Generator<number[]> {
  if (left === 0) yield [];
  for (let beads = atLeast; beads <= left; beads++)
    for (const rest of stacks(left - beads, beads)) yield [beads, ...rest];
}

/** How far beads are from being twice as far apart as thick, drawn in a fillet of leg 1. */
function misshapen(layers: readonly number[]): number {
  const passes = layers.reduce((sum, beads) => sum + beads, 0);
  let laid = layers[0] as number;
  let strain = 0;
  for (const beads of layers.slice(1)) {
    const inner = Math.sqrt(laid / passes);
    const outer = Math.sqrt((laid + beads) / passes);
    const thickness = (outer - inner) * Math.cos(Math.PI / 4);
    const step = (Math.hypot(inner, inner) + Math.hypot(outer, outer)) / 2 / beads;
    strain += beads * Math.log(step / thickness / 2) ** 2;
    laid += beads;
  }
  return strain;
}

describe('filletLayers', () => {
  it('stacks three passes 1 + 2, six 1 + 2 + 3, ten 1 + 2 + 3 + 4 (common practice, no source)', () => {
    expect(filletLayers(1, any)).toEqual([1]);
    expect(filletLayers(3, any)).toEqual([1, 2]);
    expect(filletLayers(6, any)).toEqual([1, 2, 3]);
    expect(filletLayers(10, any)).toEqual([1, 2, 3, 4]);
  });

  it('can stack two passes only one on the other', () => {
    expect(filletLayers(2, any)).toEqual([1, 1]);
  });

  it('finds the best shaped beads of all stacks', () => {
    for (let passes = 3; passes <= 22; passes++) {
      const best = Math.min(...[...stacks(passes - 1)].map((over) => misshapen([1, ...over])));
      expect(misshapen(filletLayers(passes, any) ?? []), `${passes} passes`).toBeCloseTo(best, 9);
    }
  });

  it('never takes fewer layers for more passes', () => {
    let before = 1;
    for (let passes = 1; passes <= 300; passes++) {
      const layers = filletLayers(passes, any) ?? [];
      expect(layers.reduce((sum, beads) => sum + beads, 0)).toBe(passes);
      expect(layers.length).toBeGreaterThanOrEqual(before);
      before = layers.length;
    }
  });

  it('finds nothing where no layer is thin enough', () => {
    expect(filletLayers(4, () => false)).toBeUndefined();
    expect(filletLayers(4, (_before, beads) => beads < 3)).toBeUndefined();
  });
});
