/**
 * The layers of a groove, from the root to the cover, and the beads in each. Any one unit of length.
 */
interface LayerDepths {
  /** From the bottom of the weld to the plate's surface. */
  depth: number;
  rootPassThickness: number;
  fillPassThickness: number;
  /** Most that the cover may be thick on average, its crown included. */
  coverLimit: number;
  capHeight: number;
}

/**
 * Heights of the layers' faces above the bottom of the weld, the last one the plate's surface. The
 * root pass has its thickness, the others share the rest evenly; where a tall crown would make the
 * cover too thick, it takes less of the depth and the fill layers more.
 */
export function grooveLayers(given: LayerDepths): number[] {
  const { depth, rootPassThickness, fillPassThickness, coverLimit, capHeight } = given;
  if (depth <= rootPassThickness) return [depth];
  const rest = depth - rootPassThickness;
  const cover = Math.min(fillPassThickness, coverLimit - (2 / 3) * capHeight);
  const above = 1 + Math.max(0, Math.ceil((rest - cover) / fillPassThickness - 1e-9));
  const coverThickness = Math.min(cover, rest / above);
  const heights = [rootPassThickness];
  for (let fill = 1; fill < above; fill++)
    heights.push(rootPassThickness + (fill * (rest - coverThickness)) / (above - 1));
  return [...heights, depth];
}

/**
 * Shares passes out to layers so that the largest pass is as small as it can be: each next pass goes
 * to the layer whose passes are largest, the upper one of equals. Every layer gets one; the first
 * keeps one where it must.
 */
export function beadsByLayer(
  areas: readonly number[],
  passes: number,
  singleRoot: boolean,
): number[] {
  const beads = areas.map(() => 1);
  const size = (layer: number) =>
    singleRoot && layer === 0 ? 0 : (areas[layer] as number) / (beads[layer] as number);
  for (let left = passes - areas.length; left > 0; left--) {
    let largest = 0;
    for (const layer of areas.keys())
      if (size(layer) >= size(largest) * (1 - 1e-9)) largest = layer;
    if (size(largest) === 0) break;
    beads[largest] = (beads[largest] as number) + 1;
  }
  return beads;
}
