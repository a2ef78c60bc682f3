/**
 * The section of a joint with every pass in its place, ready to draw.
 *
 * Lengths are in millimeters and areas in square millimeters. x runs to the right and y upward, as
 * gravity sees the joint: a horizontal weld has its lower plate below, an overhead weld faces down.
 * A vertical weld is seen along the joint, from above. The origin is the root. Outlines are closed,
 * counterclockwise, their first corner not repeated; curves come as short chords. Neighbors share
 * their edges, so that passes neither overlap nor leave gaps.
 */
import type { Outline } from './outline.ts';
import { type Bounds, boundsOf, type Placement, placed } from './placed-outline.ts';
import { withoutSpikes } from './without-spikes.ts';

export interface PlacedPass {
  /** In the order the passes are run, from 1. */
  number: number;
  /** From the root, from 1. */
  layer: number;
  outline: Outline;
  area: number;
}

export interface BasePart {
  part: 'plate' | 'backing strip';
  /** Plates are cut off where the drawing may end. */
  outline: Outline;
}

export interface PassMap {
  base: readonly BasePart[];
  passes: readonly PlacedPass[];
  bounds: Bounds;
}

/** The map in the frame of a position. */
export function passMap(
  base: readonly BasePart[],
  passes: readonly PlacedPass[],
  placement: Placement,
): PassMap {
  const place = <T extends { outline: Outline }>(part: T): T => ({
    ...part,
    outline: placed(part.outline, placement),
  });
  const clean = passes.map((pass) => ({ ...pass, outline: withoutSpikes(pass.outline) }));
  const parts = { base: base.map(place), passes: clean.map(place) };
  const outlines = [...parts.base, ...parts.passes].map(({ outline }) => outline);
  return { ...parts, bounds: boundsOf(outlines) };
}
