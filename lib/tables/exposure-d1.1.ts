/**
 * AWS D1.1 on low-hydrogen electrodes after the container is opened: clause 5.3.2 in 2015, 7.3.2
 * in 2020, and column A of its table.
 */
import type { Citation } from '../calculation.ts';
import type { designators } from '../inputs/classification.ts';
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

/** The row of the table for a low-hydrogen electrode; ask `exposure/low-hydrogen-only.ts` first. */
export const exposureOf = (
  classification: Classification,
  designator: (typeof designators)[number],
): Exposure =>
  designator.endsWith('R') || classification.endsWith('M') ? moistureResistant : plain;

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
} as const;
