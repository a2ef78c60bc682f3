/**
 * The joint round a fixed pipe, cut where its position changes. Both halves are alike, so one is
 * followed, from the top (0°) to the bottom (180°).
 */
import type { Position } from '../tables/weld-positions.ts';
import { positionRows } from '../tables/weld-positions.ts';
import { positionRow } from '../welds/weld-position.ts';
import { weldAtClock } from './fixed-pipe.ts';

export interface Region {
  position: Position;
  from: number;
  to: number;
}

/**
 * @param pipeInclination of the pipe’s axis from level, 0 to 90 degrees
 * @returns regions from 0° on, each beginning where the last ends, in degrees from the top
 */
export function positionRegions(pipeInclination: number): Region[] {
  const ends = [0, ...changes(pipeInclination), 180];
  const regions: Region[] = [];
  for (const [index, to] of ends.entries()) {
    const from = ends[index - 1];
    if (from === undefined || to - from < 1e-7) continue;
    const { axisInclination, faceRotation } = weldAtClock(pipeInclination, (from + to) / 2);
    const { position } = positionRow('groove', axisInclination, faceRotation);
    const last = regions.at(-1);
    if (last?.position === position) last.to = to;
    else regions.push({ position, from: last?.to ?? 0, to });
  }
  (regions.at(-1) as Region).to = 180;
  return regions;
}

/** Every angle at which an inclination or a rotation of the table is met, in order. */
function changes(pipeInclination: number): number[] {
  const alpha = (pipeInclination * Math.PI) / 180;
  const limits = positionRows.groove;
  const inclinations = new Set(limits.flatMap(({ inclination }) => inclination));
  const rotations = new Set(limits.flatMap(({ rotation }) => rotation.flat()));
  const found: number[] = [];
  const add = (radians: number) => found.push((radians * 180) / Math.PI);
  for (const limit of inclinations) {
    // I = asin(sin θ·cos α)
    const sine = Math.sin((limit * Math.PI) / 180) / Math.cos(alpha);
    if (sine > 1) continue;
    add(Math.asin(sine));
    add(Math.PI - Math.asin(sine));
  }
  for (const limit of rotations) {
    // tan ψ = sin α / (cos θ·cos α), where ψ is the rotation's distance from 180°
    const cosine = Math.tan(alpha) / Math.tan((Math.abs(limit - 180) * Math.PI) / 180);
    if (Math.abs(cosine) <= 1) add(Math.acos(cosine));
  }
  return found.sort((a, b) => a - b);
}
