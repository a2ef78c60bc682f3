/**
 * Where to set the dial for the first bead. The shop's own rows, by electrode, use and position;
 * beside them the ranges that AWS A5.1 calls typical, which are wider and know no position.
 */
import type { Citation } from '../calculation.ts';
import type { Position } from './weld-positions.ts';

/** Amperes. */
export interface CurrentRow {
  low: number;
  suggested: number;
  high: number;
}

/** Electrodes that a table here has rows for. */
export type Rated = 'E7018' | 'E6010' | 'E6013' | 'E7014' | 'E7016';

const row = (suggested: number, low: number, high: number): CurrentRow => ({
  low,
  suggested,
  high,
});

/** Of the rows below. */
export const shopRows: Citation = {
  source: 'common-practice',
  at: 'electrode positive; the label on the box rules',
  known: 'practice',
};

/** Electrode, then size in 32nds of an inch, then position. Amperes. Vertical is uphill. */
export const fillAndFillet: Record<
  Rated,
  Record<number, Record<Exclude<Position, 'horizontal'>, CurrentRow>>
> = {
  E7018: {
    3: { flat: row(85, 75, 100), vertical: row(80, 70, 90), overhead: row(85, 75, 95) },
    4: { flat: row(125, 115, 140), vertical: row(115, 105, 125), overhead: row(120, 110, 130) },
    5: { flat: row(165, 150, 190), vertical: row(140, 130, 155), overhead: row(150, 140, 165) },
  },
  E6010: {
    3: { flat: row(60, 45, 75), vertical: row(55, 45, 65), overhead: row(60, 50, 70) },
    4: { flat: row(95, 80, 115), vertical: row(85, 75, 100), overhead: row(90, 80, 105) },
  },
  E6013: {},
  E7014: {},
  E7016: {},
};

/** E6010 uphill into an open root, in any position. */
export const openRoot: Record<number, CurrentRow> = {
  3: row(60, 50, 70),
  4: row(78, 65, 90),
};

/** Amperes, by electrode and size in 32nds of an inch. */
export const typical: { cite: Citation } & Record<
  Rated,
  Record<number, { low: number; high: number }>
> = {
  cite: { source: 'aws-a5.1', at: 'annex, typical amperage ranges', known: 'memory' },
  E7018: {
    3: { low: 70, high: 100 },
    4: { low: 115, high: 165 },
    5: { low: 150, high: 220 },
    6: { low: 200, high: 275 },
  },
  E6010: {
    3: { low: 40, high: 80 },
    4: { low: 75, high: 125 },
    5: { low: 110, high: 170 },
    6: { low: 140, high: 215 },
  },
  E6013: {
    3: { low: 45, high: 90 },
    4: { low: 80, high: 130 },
    5: { low: 105, high: 180 },
    6: { low: 150, high: 230 },
  },
  E7014: {
    3: { low: 80, high: 125 },
    4: { low: 110, high: 160 },
    5: { low: 150, high: 210 },
    6: { low: 200, high: 275 },
  },
  E7016: {
    3: { low: 65, high: 110 },
    4: { low: 100, high: 150 },
    5: { low: 140, high: 200 },
    6: { low: 180, high: 255 },
  },
};

/**
 * Where the shop has no row of its own, a setting inside the typical range: a fifth of the way up,
 * as its own rows begin, and at the low end out of position.
 */
export function rowFromTypical(
  { low, high }: { low: number; high: number },
  position: Position,
): CurrentRow {
  const inPosition = position === 'flat' || position === 'horizontal';
  return row(inPosition ? low + (high - low) / 5 : low, low, high);
}

/** Whose rows an electrode shares. */
export const ratedAs = {
  E7018: 'E7018',
  E6010: 'E6010',
  E6011: 'E6010',
  E6013: 'E6013',
  E7014: 'E7014',
  E7016: 'E7016',
  'E7018-1': 'E7018',
  E7018M: 'E7018',
} as const satisfies Record<string, Rated>;
