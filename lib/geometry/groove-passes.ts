/**
 * The section of a V groove with every pass in its place. Lengths in millimeters. In a horizontal
 * groove each layer goes from the lower plate up; elsewhere it goes from one side to the other.
 */
import type { Position } from '../tables/weld-positions.ts';
import { type GrooveSection, halfWidthAt, layersOf } from './groove-section.ts';
import type { Outline, Point } from './outline.ts';
import { type BasePart, type PassMap, passMap } from './pass-map.ts';
import type { Placement } from './placed-outline.ts';
import { type StackedPass, stackedPasses } from './stacked-passes.ts';

/**
 * @param heights of the layers’ faces above the root, as `groove-layers.ts` finds them
 * @param beads in each layer, from the root up
 * @param strip whether a backing strip lies behind the root
 */
export function groovePasses(
  groove: GrooveSection,
  heights: readonly number[],
  beads: readonly number[],
  strip: boolean,
  position: Position,
): { passes: StackedPass[]; map: PassMap } {
  const layers = layersOf(groove, heights);
  const passes = stackedPasses(
    layers.map((layer, index) => ({ ...layer, beads: beads[index] as number })),
  );
  const outlines = passes.map(({ number, layer, bead: { outline, area } }) => ({
    number,
    layer,
    outline,
    area,
  }));
  const base = strip ? [...plates(groove), backingStrip(groove)] : plates(groove);
  return { passes, map: passMap(base, outlines, placements[position]) };
}

const placements: Readonly<Record<Position, Placement>> = {
  flat: { x: [1, 0], y: [0, 1] },
  horizontal: { x: [0, 1], y: [1, 0] },
  vertical: { x: [1, 0], y: [0, 1] },
  overhead: { x: [1, 0], y: [0, -1] },
};

const stripThickness = 6.35;

/** A strip reaches at least 1/2 in under each plate. */
const stripHalfWidth = ({ rootOpening }: GrooveSection): number =>
  Math.max(19.05, rootOpening / 2 + 12.7);

function plates(groove: GrooveSection): BasePart[] {
  const { thickness, rootOpening, rootFace } = groove;
  const face = halfWidthAt(groove, thickness);
  const end = Math.max(face + thickness, stripHalfWidth(groove) + thickness / 2);
  const edge: Point[] = [
    [rootOpening / 2, 0],
    [end, 0],
    [end, thickness],
    [face, thickness],
    ...(rootFace > 0 && rootFace < thickness ? [[rootOpening / 2, rootFace] as Point] : []),
  ];
  const mirrored: Outline = edge.map(([x, y]): Point => [-x, y]).reverse();
  return [
    { part: 'plate', outline: mirrored },
    { part: 'plate', outline: edge },
  ];
}

function backingStrip(groove: GrooveSection): BasePart {
  const half = stripHalfWidth(groove);
  return {
    part: 'backing strip',
    outline: [
      [-half, -stripThickness],
      [half, -stripThickness],
      [half, 0],
      [-half, 0],
    ],
  };
}
