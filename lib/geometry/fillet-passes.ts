/**
 * The section of an equal-leg fillet between square plates, every pass in its place: the root pass
 * in the corner, then layers, each laid from the lower toe to the upper. Lengths in millimeters.
 */
import type { Position } from '../tables/prequalified-limits-d1.1.ts';
import { type Bead, layerBeads } from './layer-beads.ts';
import type { LayerFace } from './layer-face.ts';
import type { Placement } from './outline.ts';
import { placed } from './outline.ts';
import { type BasePart, type PassMap, type PlacedPass, passMap } from './pass-map.ts';

export interface FilletPass {
  number: number;
  layer: number;
  area: number;
  /** The earlier pass that it laps over, and how much of that one's open face it covers. */
  over?: { number: number; share: number };
  /** How far the weld reaches along each plate once the pass is in. */
  lowerLeg: number;
  upperLeg: number;
}

export function filletPasses(
  leg: number,
  convexity: number,
  beadsByLayer: readonly number[],
  position: Position,
): { passes: FilletPass[]; map: PassMap } {
  const total = beadsByLayer.reduce((sum, beads) => sum + beads, 0);
  const passes: FilletPass[] = [];
  const outlines: PlacedPass[] = [];
  let under: { bead: Bead; number: number } | undefined;
  let lower: LayerFace = { halfWidth: 0, height: 0, crown: 0 };
  let reached = 0;
  for (const [index, count] of beadsByLayer.entries()) {
    const laid = passes.length;
    const share = Math.sqrt((laid + count) / total);
    const upper = {
      halfWidth: (leg * share) / Math.SQRT2,
      height: (leg * share) / Math.SQRT2,
      crown: convexity * share,
    };
    const beads = layerBeads({ lower, upper }, count);
    for (const [i, bead] of beads.entries()) {
      const number = laid + i + 1;
      const over = lappedOver(beads, i, number, under);
      passes.push({
        number,
        layer: index + 1,
        area: bead.area,
        ...(over && { over }),
        lowerLeg: leg * share,
        upperLeg: i + 1 < count ? reached : leg * share,
      });
      const outline = placed(bead.outline, cornerFrame);
      outlines.push({ number, layer: index + 1, outline, area: bead.area });
    }
    under = { bead: beads[0] as Bead, number: laid + 1 };
    lower = upper;
    reached = leg * share;
  }
  return { passes, map: passMap(plates(leg), outlines, placements[position]) };
}

/** A bead laps over the one before in its layer; the first one over the first of the layer below. */
function lappedOver(
  beads: readonly Bead[],
  i: number,
  number: number,
  under: { bead: Bead; number: number } | undefined,
): FilletPass['over'] {
  const before = beads[i - 1];
  if (before) {
    const open = before.top[1] - before.top[0];
    return { number: number - 1, share: before.flank / (before.flank + open) };
  }
  if (!under) return undefined;
  const [from, to] = under.bead.top;
  const covered = Math.min(to, (beads[i] as Bead).foot[1]) - from;
  return { number: under.number, share: covered / (to - from) };
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

/** Two plates as thick as the leg, the upper one standing on the lower. */
function plates(leg: number): BasePart[] {
  const thick = leg;
  const end = 1.75 * leg;
  return [
    {
      name: 'lower plate',
      outline: [
        [-thick - 0.75 * leg, -thick],
        [end, -thick],
        [end, 0],
        [-thick - 0.75 * leg, 0],
      ],
    },
    {
      name: 'upper plate',
      outline: [
        [-thick, 0],
        [0, 0],
        [0, end],
        [-thick, end],
      ],
    },
  ];
}
