import { filletLayers } from '../geometry/fillet-layers.ts';
import { type FilletPass, filletPasses } from '../geometry/fillet-passes.ts';
import type { PassMap } from '../geometry/pass-map.ts';
import { NoAnswer } from '../no-answer.ts';
import type { Position } from '../tables/weld-positions.ts';
import { passesFor } from './passes-for.ts';

const inch = 25.4;
const mostPasses = 300;

/** The fillet, and the limits of its position; inches. */
interface AskedFillet {
  leg: number;
  convexity: number;
  position: Position;
  largestRoot: number;
  thickestFill: number;
}

export interface PlannedFillet {
  /** Of the whole weld, its bulge included, in square inches. */
  jointArea: number;
  /** Passes that the area alone asks for; the limits may ask for more. */
  byArea: number;
  /** Of each layer, from the root up. */
  beads: number[];
  /** Lengths in millimeters. */
  passes: FilletPass[];
  map: PassMap;
}

/**
 * A fillet built from equal passes: as many as its area takes, and more where one would be thicker
 * than its position allows. Throws NoAnswer where they are more than anybody would run.
 */
export function plannedFillet(
  { leg, convexity, position, largestRoot, thickestFill }: AskedFillet,
  passArea: { size: number; given: boolean },
): PlannedFillet {
  const jointArea = leg ** 2 / 2 + (2 / 3) * Math.SQRT2 * leg * convexity;
  const byArea = passesFor(jointArea, passArea.size);
  const byRoot = Math.ceil((leg / largestRoot) ** 2 - 1e-9);
  /** From root to face for a leg of 1; layers are slices of it. */
  const depth = Math.SQRT1_2 + convexity / leg;
  for (let passes = Math.max(byArea, byRoot); passes <= mostPasses; passes++) {
    const legAfter = (count: number) => leg * Math.sqrt(count / passes);
    const beads = filletLayers(passes, (before, count) => {
      const thickness = depth * (legAfter(before + count) - legAfter(before));
      return thickness <= thickestFill;
    });
    if (beads)
      return {
        jointArea,
        byArea,
        beads,
        ...filletPasses(leg * inch, convexity * inch, beads, position),
      };
  }
  throw new NoAnswer(
    `This takes more than ${mostPasses} passes; look at the leg and at the area of a pass again`,
    passArea.given ? 'passArea' : 'leg',
  );
}
