/**
 * AWS D1.1:2020 Table 5.1 (3.7 in 2000, 3.6 or 3.7 in 2010 and 2015), the columns of shielded
 * metal arc welding. These are ceilings for procedures that need no test of their own, not advice:
 * a 1/2 in single pass uphill is allowed, and no beginner makes one with a 1/8 in electrode.
 */
import type { Citation } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import { printFraction } from '../text/inches.ts';
import type { Position } from './weld-positions.ts';

/** In the order of the table’s columns. */
export const positions = [
  'flat',
  'horizontal',
  'vertical',
  'overhead',
] as const satisfies readonly Position[];

export interface PassLimits {
  /** Largest electrode, by its core wire. */
  filletDiameter: PrintedFigure;
  grooveDiameter: PrintedFigure;
  rootPassDiameter: PrintedFigure;
  singlePassFillet: PrintedFigure;
  rootPassThickness: PrintedFigure;
  fillPassThickness: PrintedFigure;
}

/** By position; a vertical weld runs uphill. */
export const passLimits: Readonly<Record<Position, PassLimits>> = {
  flat: {
    filletDiameter: { us: 5 / 16, metric: 8 },
    grooveDiameter: { us: 1 / 4, metric: 6.4 },
    rootPassDiameter: { us: 3 / 16, metric: 4.8 },
    singlePassFillet: { us: 3 / 8, metric: 10 },
    rootPassThickness: { us: 3 / 8, metric: 10 },
    fillPassThickness: { us: 3 / 16, metric: 5 },
  },
  horizontal: {
    filletDiameter: { us: 1 / 4, metric: 6.4 },
    grooveDiameter: { us: 3 / 16, metric: 4.8 },
    rootPassDiameter: { us: 3 / 16, metric: 4.8 },
    singlePassFillet: { us: 5 / 16, metric: 8 },
    rootPassThickness: { us: 5 / 16, metric: 8 },
    fillPassThickness: { us: 3 / 16, metric: 5 },
  },
  vertical: {
    filletDiameter: { us: 3 / 16, metric: 4.8 },
    grooveDiameter: { us: 3 / 16, metric: 4.8 },
    rootPassDiameter: { us: 3 / 16, metric: 4.8 },
    singlePassFillet: { us: 1 / 2, metric: 12 },
    rootPassThickness: { us: 1 / 2, metric: 12 },
    fillPassThickness: { us: 3 / 16, metric: 5 },
  },
  overhead: {
    filletDiameter: { us: 3 / 16, metric: 4.8 },
    grooveDiameter: { us: 3 / 16, metric: 4.8 },
    rootPassDiameter: { us: 3 / 16, metric: 4.8 },
    singlePassFillet: { us: 5 / 16, metric: 8 },
    rootPassThickness: { us: 5 / 16, metric: 8 },
    fillPassThickness: { us: 3 / 16, metric: 5 },
  },
};

/** Of all rows here. */
export const citePassLimits: Citation = {
  source: 'aws-d1.1',
  at: '2020 Table 5.1, shielded metal arc welding',
  known: 'read',
};

/**
 * The table's note e: vertical and overhead, electrodes that are low-hydrogen (and EXX14) end at
 * this core wire, whatever the row says.
 */
export const smallerOutOfPosition: PrintedFigure = { us: 5 / 32, metric: 4 };

/** Of note e. */
export const citeSmallerOutOfPosition: Citation = {
  source: 'aws-d1.1',
  at: '2020 Table 5.1, note e',
  known: 'memory',
};
/** A limit in a sentence. */
export const saidLimit = ({ us, metric }: PrintedFigure): string =>
  `{${printFraction(us, 16)} in|${metric} mm}`;
