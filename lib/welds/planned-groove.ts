import { beadsByLayer, grooveLayers } from '../geometry/groove-layers.ts';
import { groovePasses } from '../geometry/groove-passes.ts';
import {
  bottomOf,
  type GrooveSection,
  halfWidthAt,
  inUnit,
  layerArea,
  layersOf,
} from '../geometry/groove-section.ts';
import type { PassMap } from '../geometry/pass-map.ts';
import type { StackedPass } from '../geometry/stacked-passes.ts';
import { NoAnswer } from '../no-answer.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import { passLimits } from '../tables/prequalified-limits-d1.1.ts';
import type { Position } from '../tables/weld-positions.ts';
import { passesFor } from './passes-for.ts';

const inch = 25.4;
const mostPasses = 300;

export interface PassThickness {
  rootPassThickness: number;
  fillPassThickness: number;
}

export interface PlannedGroove {
  /** Of the layers' faces above the root, in inches. */
  heights: number[];
  /** Cap included, in square inches. */
  jointArea: number;
  /** Of each layer, from the root up. */
  beads: number[];
  passes: StackedPass[];
  map: PassMap;
  /** A layer was wanted thicker than its limit, and is planned at the limit. */
  clipped: boolean;
}

/**
 * A groove filled with passes, in inches: layers from root to cap, none over the limits of its
 * position, and beads in each. Throws NoAnswer where there is nothing to fill, the cap does not fit
 * on the face, or the passes are more than anybody would run.
 */
export function plannedGroove(
  groove: GrooveSection,
  backing: 'strip' | 'open root',
  position: Position,
  { rootPassThickness, fillPassThickness }: PassThickness,
  passArea: { size: number; given: boolean },
): PlannedGroove {
  const { thickness, rootFace, capHeight } = groove;
  if (rootFace > thickness)
    throw new NoAnswer('The root face is thicker than the plate', 'rootFace');
  const bottom = bottomOf(groove);
  const halfFace = halfWidthAt(groove, thickness);
  if (halfFace < 0.005)
    throw new NoAnswer(
      'There is no groove to fill: open the root or bevel the edges',
      'rootOpening',
    );
  if (capHeight > halfFace)
    throw new NoAnswer('Cap height is more than half the width of the face', 'capHeight');
  const limits = passLimits[position];
  const rootLimit = ceiling(limits.rootPassThickness);
  const fillLimit = ceiling(limits.fillPassThickness);
  const heights = grooveLayers({
    depth: thickness - bottom,
    rootPassThickness: Math.min(rootPassThickness, rootLimit),
    fillPassThickness: Math.min(fillPassThickness, fillLimit),
    coverLimit: fillLimit,
    capHeight,
  }).map((height) => bottom + height);
  const areas = layersOf(groove, heights).map(layerArea);
  const jointArea = areas.reduce((sum, area) => sum + area, 0);
  const wanted = Math.max(heights.length, passesFor(jointArea, passArea.size));
  if (wanted > mostPasses)
    throw new NoAnswer(
      `This takes more than ${mostPasses} passes; look at the groove and the area of a pass again`,
      passArea.given ? 'passArea' : 'thickness',
    );
  const beads = beadsByLayer(areas, wanted, backing === 'open root');
  const { passes, map } = groovePasses(
    inUnit(groove, inch),
    heights.map((height) => height * inch),
    beads,
    backing === 'strip',
    position,
  );
  const clipped = rootPassThickness > rootLimit || fillPassThickness > fillLimit;
  return { heights, jointArea, beads, passes, map, clipped };
}

/** The larger of a limit's two printed figures, so that neither reader is refused his own. */
const ceiling = ({ us, metric }: PrintedFigure): number => Math.max(us, metric / inch);
