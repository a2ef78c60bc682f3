/**
 * AWS D1.1 weld profiles from 2000 on (2000 to 2010 Figure 5.4; 2015 Tables 5.9 and 5.10; 2020
 * Tables 7.8 and 7.9): the most that the face of a fillet, or of one of its beads, may bulge. Both
 * unit systems are printed; neither is converted from the other.
 */
import type { Citation } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import type { System } from '../units.ts';

/** Widths of the face at which the limit changes. */
export const faceBreaks: Readonly<Record<'narrow' | 'wide', PrintedFigure>> = {
  narrow: { us: 5 / 16, metric: 8 },
  wide: { us: 1, metric: 25 },
};

/** The most convexity, by the row that the face falls in. */
export const convexityLimits = {
  narrow: { us: 1 / 16, metric: 2 },
  middle: { us: 1 / 8, metric: 3 },
  wide: { us: 3 / 16, metric: 5 },
} as const satisfies Record<string, PrintedFigure>;

export type FaceRow = keyof typeof convexityLimits;

/** Up to and including the narrow break; from the wide one on, itself included; or between. */
export function faceRow(width: number, system: System): FaceRow {
  if (width <= faceBreaks.narrow[system]) return 'narrow';
  return width < faceBreaks.wide[system] ? 'middle' : 'wide';
}

/** Each row in words, for the reasons under an answer. */
export const faceRowTexts: Readonly<Record<FaceRow, string>> = {
  narrow: 'faces up to {5/16 in|8 mm} wide may bulge {1/16 in|2 mm}',
  middle: 'faces over {5/16 in|8 mm} and under {1 in|25 mm} wide may bulge {1/8 in|3 mm}',
  wide: 'faces {1 in|25 mm} wide or more may bulge {3/16 in|5 mm}',
};

/** Of breaks and limits. */
export const citeConvexity: Citation = {
  source: 'aws-d1.1',
  at: 'weld profiles: Figure 5.4 (2000), Table 5.10 (2015), 7.9 (2020)',
  known: 'memory',
};
