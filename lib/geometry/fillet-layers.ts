/**
 * How many beads each layer of a fillet holds, from the root up, when all passes have the same area.
 *
 * With equal passes the leg grows as the square root of the passes so far, so the shape of a bead
 * depends only on the numbers before and in its layer. A bead about five times as wide as high that
 * laps half over the last one steps over twice the thickness of its layer: step w/2, thickness
 * (2/3) w h / (w/2), so 3 w / 8 h. The layers are chosen so that the beads come closest to that, none
 * with fewer beads than the one under it, and none with a single bead over the root pass, which only
 * a weave could lay. Three passes give 1 + 2, six 1 + 2 + 3. Two can only be 1 + 1.
 */
const stepByThickness = 2;

/** Beads side by side over `before` passes: their step-over by the thickness of their layer. */
const stepOver = (before: number, beads: number): number =>
  ((Math.sqrt(before + beads) + Math.sqrt(before)) / beads) ** 2;

interface Stack {
  beads: number[];
  strain: number;
}

/**
 * `fits` says whether a layer of so many beads over so many passes is thin enough; the root pass is
 * not asked about. Undefined when no arrangement fits.
 */
export function filletLayers(
  passes: number,
  fits: (before: number, beads: number) => boolean,
): number[] | undefined {
  const widest = Math.ceil(Math.sqrt(2 * passes)) + 2;
  /** The best stack of so many passes whose top layer has at most so many beads. */
  const best: (Stack | undefined)[][] = [];
  best[1] = new Array(widest + 1).fill({ beads: [1], strain: 0 });
  for (let total = 2; total <= passes; total++) {
    const row: (Stack | undefined)[] = [undefined];
    for (let beads = 1; beads <= widest; beads++) {
      const before = total - beads;
      const weave = beads === 1 && passes > 2;
      const under = before > 0 && !weave && fits(before, beads) ? best[before]?.[beads] : undefined;
      const strain =
        (under?.strain ?? 0) + beads * Math.log(stepOver(before, beads) / stepByThickness) ** 2;
      const narrower = row[beads - 1];
      row[beads] =
        under && (!narrower || strain < narrower.strain)
          ? { beads: [...under.beads, beads], strain }
          : narrower;
    }
    best[total] = row;
  }
  return best[passes]?.[widest]?.beads;
}
