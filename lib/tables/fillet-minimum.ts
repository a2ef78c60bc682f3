/**
 * Minimum fillet leg by part thickness. Both codes print the same four sizes, each row up to and
 * including the thickness it names; the inch breaks agree, the millimeter breaks do not.
 */
import type { Citation } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';

/** Codes whose table stands here. */
export const filletCodes = ['AISC 360', 'AWS D1.1'] as const;
export type FilletCode = (typeof filletCodes)[number];

export interface FilletRow {
  /** Largest thickness of the row, in inches and in millimeters, as printed. */
  upTo: PrintedFigure;
  /** Minimum leg in inches and in millimeters, as printed. */
  leg: PrintedFigure;
}

const legs: readonly PrintedFigure[] = [
  { us: 1 / 8, metric: 3 },
  { us: 3 / 16, metric: 5 },
  { us: 1 / 4, metric: 6 },
  { us: 5 / 16, metric: 8 },
];
const inchBreaks = [1 / 4, 1 / 2, 3 / 4, Number.POSITIVE_INFINITY];

const rowsWith = (millimeterBreaks: readonly number[]): FilletRow[] =>
  legs.map((leg, index) => ({
    upTo: {
      us: inchBreaks[index] as number,
      metric: millimeterBreaks[index] ?? Number.POSITIVE_INFINITY,
    },
    leg,
  }));

/** Rows from thin to thick; the last has no end. */
export const filletMinimumRows: Readonly<Record<FilletCode, readonly FilletRow[]>> = {
  'AISC 360': rowsWith([6, 13, 19]),
  'AWS D1.1': rowsWith([6, 12, 20]),
};

/** Of the rows of each code. */
export const citeFilletMinimum: Readonly<Record<FilletCode, Citation>> = {
  'AISC 360': { source: 'aisc-360', at: 'Table J2.4 (2005 text; 2022 the same)', known: 'read' },
  'AWS D1.1': {
    source: 'aws-d1.1',
    at: 'Table 5.8 (2000), 5.7 (2015), 7.7 (2020)',
    known: 'memory',
  },
};
