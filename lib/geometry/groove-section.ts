/** A V groove in plate, symmetric about x = 0, the root at y = 0 and the plate's surface above it. */
import type { Layer } from './layer-beads.ts';
import type { LayerFace } from './layer-face.ts';

export interface GrooveSection {
  thickness: number;
  rootOpening: number;
  /** In degrees. */
  includedAngle: number;
  rootFace: number;
  capHeight: number;
}

/** The same groove with its lengths in another unit. */
export const inUnit = (groove: GrooveSection, factor: number): GrooveSection => ({
  thickness: groove.thickness * factor,
  rootOpening: groove.rootOpening * factor,
  includedAngle: groove.includedAngle,
  rootFace: groove.rootFace * factor,
  capHeight: groove.capHeight * factor,
});

/** From the middle of the groove to its side at the height `y` above the root. */
export function halfWidthAt({ rootOpening, includedAngle, rootFace }: GrooveSection, y: number) {
  const lean = Math.tan(((includedAngle / 2) * Math.PI) / 180);
  return rootOpening / 2 + Math.max(0, y - rootFace) * lean;
}

/** Closed root faces leave nothing to fill: the weld begins where the groove opens. */
export const bottomOf = ({ rootOpening, rootFace }: GrooveSection): number =>
  rootOpening > 0 ? 0 : rootFace;

/** The layers whose faces lie at the given heights above the root; the last one carries the cap. */
export function layersOf(groove: GrooveSection, heights: readonly number[]): Layer[] {
  const face = (height: number, crown = 0): LayerFace => ({
    halfWidth: halfWidthAt(groove, height),
    height,
    crown,
  });
  return heights.map((height, index): Layer => {
    const below = heights[index - 1] ?? bottomOf(groove);
    const isCover = index === heights.length - 1;
    const bends = below < groove.rootFace && groove.rootFace < height;
    return {
      lower: face(below),
      upper: face(height, isCover ? groove.capHeight : 0),
      bend: bends ? { halfWidth: groove.rootOpening / 2, height: groove.rootFace } : undefined,
    };
  });
}

/** Section area of a layer, its share of the cap included. */
export function layerArea({ lower, upper, bend }: Layer): number {
  const middle = bend ?? lower;
  const trapezoid = (a: LayerSide, b: LayerSide) =>
    (a.halfWidth + b.halfWidth) * (b.height - a.height);
  const crown = (4 / 3) * upper.halfWidth * upper.crown;
  return trapezoid(lower, middle) + trapezoid(middle, upper) + crown;
}

type LayerSide = Pick<LayerFace, 'halfWidth' | 'height'>;
