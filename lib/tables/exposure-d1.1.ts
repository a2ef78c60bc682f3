/**
 * AWS D1.1 on low-hydrogen electrodes after the container is opened: clause 5.3.2 in 2015, 7.3.2
 * in 2020, and column A of its table.
 */
import type { Citation } from '../calculation.ts';
import type { designators } from '../inputs/classification.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import type { Classification } from './classifications.ts';

interface Exposure {
  /** The longest time in open air, in hours. */
  hours: number;
  row: string;
  cite: Citation;
}

const at = '2015 Table 5.1, 2020 Table 7.1, column A';
const plain: Exposure = {
  hours: 4,
  row: 'E70XX',
  cite: { source: 'aws-d1.1', at, known: 'read' },
};
const moistureResistant: Exposure = {
  hours: 9,
  row: 'E70XXR, E70XXHZR, E7018M',
  cite: { source: 'aws-d1.1', at, known: 'memory' },
};

/**
 * Low-hydrogen electrodes of AWS A5.5, as the table has them: by strength, whatever the alloy.
 * E8018-C3 is one of E80XX-X. No row of theirs asks for the R.
 */
export const lowAlloyRows = ['E70XX-X', 'E80XX-X', 'E90XX-X', 'E100XX-X', 'E110XX-X'] as const;
type LowAlloyRow = (typeof lowAlloyRows)[number];
/** What the table has a row for. */
export type ExposedElectrode = Classification | LowAlloyRow;

const lowAlloyHours: Record<LowAlloyRow, number> = {
  'E70XX-X': 4,
  'E80XX-X': 2,
  'E90XX-X': 1,
  'E100XX-X': 0.5,
  'E110XX-X': 0.5,
};

/** A row of A5.5, and no electrode of A5.1. */
export const isLowAlloy = (electrode: ExposedElectrode): electrode is LowAlloyRow =>
  Object.hasOwn(lowAlloyHours, electrode);

/** The row of the table for a low-hydrogen electrode; ask `exposure/low-hydrogen-only.ts` first. */
export function exposureOf(
  electrode: ExposedElectrode,
  designator: (typeof designators)[number],
): Exposure {
  if (isLowAlloy(electrode))
    return {
      hours: lowAlloyHours[electrode],
      row: electrode,
      cite: { source: 'aws-d1.1', at, known: 'memory' },
    };
  return designator.endsWith('R') || electrode.endsWith('M') ? moistureResistant : plain;
}

/** What makes electrodes dry again, and how often that may be done. */
export interface Bake {
  from: PrintedFigure;
  to: PrintedFigure;
  hours: number;
  times: number;
  cite: Citation;
}

/** Temperatures in °F as printed, with the printed °C; times in hours. */
export const ovenRules = {
  hold: {
    least: { us: 250, metric: 120 },
    hours: 4,
    cite: { source: 'aws-d1.1', at: '2015 clause 5.3.2.1 and 5.3.2.2', known: 'read' } as Citation,
  },
  rebake: {
    from: { us: 500, metric: 260 },
    to: { us: 800, metric: 430 },
    hours: 2,
    times: 1,
    cite: { source: 'aws-d1.1', at: '2015 clause 5.3.2.1 and 5.3.2.4', known: 'read' } as Citation,
  },
  rebakeLowAlloy: {
    from: { us: 700, metric: 370 },
    to: { us: 800, metric: 430 },
    hours: 1,
    times: 1,
    cite: { source: 'aws-d1.1', at: '2015 clause 5.3.2.1 and 5.3.2.4', known: 'read' } as Citation,
  },
} as const;

/** The rebake that the clause allows an electrode. */
export const bakeOf = (electrode: ExposedElectrode): Bake =>
  isLowAlloy(electrode) ? ovenRules.rebakeLowAlloy : ovenRules.rebake;
