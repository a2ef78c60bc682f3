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
  'E7018' | 'E6010',
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
};

/** E6010 uphill into an open root, in any position. */
export const openRoot: Record<number, CurrentRow> = {
  3: row(60, 50, 70),
  4: row(78, 65, 90),
};

/** Amperes, by electrode and size in 32nds of an inch. */
export const typical: { cite: Citation } & Record<
  'E7018' | 'E6010',
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
};
