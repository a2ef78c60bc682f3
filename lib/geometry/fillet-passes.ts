/**
 * The section of an equal-leg fillet between square plates, every pass in its place: the root pass
 * in the corner, then layers, each laid from the lower toe to the upper. Lengths in millimeters.
 */
import type { Position } from '../tables/weld-positions.ts';
import type { LayerFace } from './layer-face.ts';
import { type BasePart, type PassMap, passMap } from './pass-map.ts';
import { type Placement, placed } from './placed-outline.ts';
import { type StackedPass, stackedPasses } from './stacked-passes.ts';

export interface FilletPass extends StackedPass {
  /** How far the weld reaches along each plate once the pass is in. */
  lowerLeg: number;
  upperLeg: number;
}

/**
 * `leg` and `convexity` in millimeters; `beadsByLayer` from the root up, as `fillet-layers.ts`
 * finds it.
 */
export function filletPasses(
  leg: number,
  convexity: number,
  beadsByLayer: readonly number[],
  position: Position,
): { passes: FilletPass[]; map: PassMap } {
  const total = beadsByLayer.reduce((sum, beads) => sum + beads, 0);
  /** All passes have one area and all faces one shape, so sizes go as the root of the passes laid. */
  const shares = [0];
  let laid = 0;
  for (const beads of beadsByLayer) {
    laid += beads;
    shares.push(Math.sqrt(laid / total));
  }
  const shareAfter = (layer: number) => shares[layer] as number;
  const face = (layer: number): LayerFace => ({
    halfWidth: (leg * shareAfter(layer)) / Math.SQRT2,
    height: (leg * shareAfter(layer)) / Math.SQRT2,
    crown: convexity * shareAfter(layer),
  });
  const stacked = stackedPasses(
    beadsByLayer.map((beads, index) => ({ lower: face(index), upper: face(index + 1), beads })),
  );
  const passes = stacked.map((pass, index): FilletPass => {
    const closesLayer = stacked[index + 1]?.layer !== pass.layer;
    return {
      ...pass,
      lowerLeg: leg * shareAfter(pass.layer),
      upperLeg: leg * shareAfter(closesLayer ? pass.layer : pass.layer - 1),
    };
  });
  const outlines = passes.map(({ number, layer, bead }) => ({
    number,
    layer,
    outline: placed(bead.outline, cornerFrame),
    area: bead.area,
  }));
  return { passes, map: passMap(plates(leg), outlines, placements[position]) };
}

const diagonal = Math.SQRT1_2;

/** A layer's frame within the corner: from the lower toe to the upper, and out of the corner. */
const cornerFrame: Placement = { x: [-diagonal, diagonal], y: [diagonal, diagonal] };

/** The corner, lower plate along x and upper plate along y, as gravity sees it. */
const placements: Readonly<Record<Position, Placement>> = {
  flat: { x: [-diagonal, diagonal], y: [diagonal, diagonal] },
  horizontal: { x: [1, 0], y: [0, 1] },
  vertical: { x: [1, 0], y: [0, 1] },
  overhead: { x: [0, -1], y: [1, 0] },
};

/** Two plates as thick as the leg, one standing on the other. */
function plates(leg: number): BasePart[] {
  const end = 1.75 * leg;
  return [
    {
      part: 'plate',
      outline: [
        [-end, -leg],
        [end, -leg],
        [end, 0],
        [-end, 0],
      ],
    },
    {
      part: 'plate',
      outline: [
        [-leg, 0],
        [0, 0],
        [0, end],
        [-leg, end],
      ],
    },
  ];
}
