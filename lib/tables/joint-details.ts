/**
 * Single V grooves of this course: what is drawn, and what may be found after fit-up. Openings are
 * the printed ones of each unit system; angles are of both bevels together.
 */
import type { Citation } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import { positions } from './prequalified-limits-d1.1.ts';
import type { Position } from './weld-positions.ts';

interface Span<T> {
  from: T;
  to: T;
}

export interface JointDetail {
  opening: PrintedFigure;
  /** In degrees. */
  angle: number;
  backing: 'strip' | 'open root';
  positions: readonly Position[];
  /** What the measured opening and angle may be, as drawn and after fit-up. */
  may: Record<Stage, { opening: Span<PrintedFigure>; angle: Span<number> }>;
  cite: Citation;
}

/** The tolerance is narrow on the drawing and wider once the joint is tacked. */
export const stages = ['after fit-up', 'on the drawing'] as const;
export type Stage = (typeof stages)[number];

const notHorizontal = positions.filter((position) => position !== 'horizontal');

const onStrip = (
  opening: PrintedFigure,
  angle: number,
  allowed: readonly Position[],
): JointDetail => ({
  opening,
  angle,
  backing: 'strip',
  positions: allowed,
  may: {
    'on the drawing': {
      opening: { from: opening, to: more(opening, 1 / 16, 2) },
      angle: { from: angle, to: angle + 10 },
    },
    'after fit-up': {
      opening: { from: more(opening, -1 / 16, -2), to: more(opening, 1 / 4, 6) },
      angle: { from: angle - 5, to: angle + 10 },
    },
  },
  cite: {
    source: 'aws-d1.1',
    at: 'B-U2a for covered electrodes, Figure 5.1 (2020)',
    known: 'memory',
  },
});

const more = (
  { us, metric }: PrintedFigure,
  inches: number,
  millimeters: number,
): PrintedFigure => ({
  us: us + inches,
  metric: metric + millimeters,
});

const byTheShop = {
  opening: { from: { us: 3 / 32, metric: 2.4 }, to: { us: 1 / 8, metric: 3.2 } },
  angle: { from: 60, to: 75 },
};

/** By the name that the course gives each joint. */
export const jointDetails = {
  'on a strip, 45°': onStrip({ us: 1 / 4, metric: 6 }, 45, positions),
  'on a strip, 30°': onStrip({ us: 3 / 8, metric: 10 }, 30, notHorizontal),
  'on a strip, 20°': onStrip({ us: 1 / 2, metric: 12 }, 20, notHorizontal),
  'open root': {
    opening: byTheShop.opening.to,
    angle: 75,
    backing: 'open root',
    positions,
    may: { 'on the drawing': byTheShop, 'after fit-up': byTheShop },
    cite: { source: 'common-practice', at: 'open-root plate and pipe', known: 'practice' },
  },
} as const satisfies Record<string, JointDetail>;

export type JointName = keyof typeof jointDetails;
/** In the order of the table. */
export const jointNames = Object.keys(jointDetails) as [JointName, ...JointName[]];

/** The widest opening after fit-up by another quotation of the same figure, for the {1/4 in} joint. */
export const otherWidest: PrintedFigure = { us: 3 / 8, metric: 10 };
/** Of that other quotation. */
export const citeOtherWidest: Citation = {
  source: 'aws-d1.1',
  at: 'a quotation that gives {3/16 in|5 mm} to {3/8 in|10 mm}',
  known: 'read',
};
