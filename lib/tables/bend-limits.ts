/** What a bent strap may show on its stretched side. Figures as printed in both systems. */
import type { Citation } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';

/** A limit in inches and in millimeters, as the code prints both. */
const printed = (us: number, metric: number): PrintedFigure => ({ us, metric });

/** AWS D1.1: one by one, the smaller ones added up, and corner cracks by themselves. */
export const bendD11 = {
  largest: printed(1 / 8, 3),
  /** Openings longer than this, and no longer than the largest, are added up. */
  countedFrom: printed(1 / 32, 1),
  sum: printed(3 / 8, 10),
  corner: printed(1 / 4, 6),
  cite: {
    source: 'aws-d1.1',
    at: '2015 clause 4.9.3.3, 2020 clause 6.10.3.3',
    known: 'read',
  } as Citation,
};

/** ASME IX: one by one. */
export const bendIX = {
  largest: printed(1 / 8, 3),
  cite: { source: 'asme-ix', at: '2010 QW-163', known: 'read' } as Citation,
};
