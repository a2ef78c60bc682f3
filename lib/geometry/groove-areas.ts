/** Areas of weld metal, deposit and melted metal in a section of a groove weld. */
import type { GrooveOutline } from './groove-outline.ts';
import { type Outline, type Point, signedArea } from './outline.ts';

interface GrooveAreas {
  weldArea: number;
  depositArea?: number;
  meltedArea?: number;
  /** Melted metal in the weld, in percent. */
  dilution?: number;
}

/**
 * In the square of the outline's unit. Without both prepared edges, what was melted cannot be told
 * from what came from the electrode. `onStrip`: the metal under the back is melted strip.
 */
export function grooveAreas(
  onStrip: boolean,
  { cap, root, fusionA, fusionB, edgeA, edgeB }: GrooveOutline,
): GrooveAreas {
  // Each piece closed by itself; together they go once round the weld.
  const corners = [cap[0], cap.at(-1), root.at(-1), root[0]] as Outline;
  const [sideA, sideB, under] = [signedArea(fusionA), signedArea(fusionB), signedArea(root)];
  const round = signedArea(cap) + sideB - under - sideA + signedArea(corners);
  const weldArea = Math.abs(round);
  if (edgeA.length < 2 || edgeB.length < 2) return { weldArea };
  const [toeA, rootA] = [fusionA[0], fusionA.at(-1)] as [Point, Point];
  const [toeB, rootB] = [fusionB[0], fusionB.at(-1)] as [Point, Point];
  const meltedArea =
    Math.sign(round) *
    (signedArea([...edgeA, rootA, toeA]) -
      sideA +
      sideB -
      signedArea([...edgeB, rootB, toeB]) -
      (onStrip ? under : 0));
  return {
    weldArea,
    meltedArea,
    depositArea: weldArea - meltedArea,
    dilution: (100 * meltedArea) / weldArea,
  };
}
