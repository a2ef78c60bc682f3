/**
 * The factors of the run-out formula: heat for each cubic millimeter of core wire melted, by the
 * nominal efficiency of the electrode (ISO 2401: weld metal per core metal). A thicker coating with
 * more iron powder needs more heat for the same length of core.
 */
import type { Citation } from '../calculation.ts';

export interface RunOutFactor {
  /** Nominal electrode efficiency in percent: above `over`, up to and including `upTo`. */
  over: number;
  upTo: number;
  /** kJ/mm³ of core wire. */
  factor: number;
}

/** From thin coatings to heavy ones. */
export const runOutFactors: readonly RunOutFactor[] = [
  { over: 0, upTo: 95, factor: 0.0368 },
  { over: 95, upTo: 110, factor: 0.0408 },
  { over: 110, upTo: 130, factor: 0.0472 },
  { over: 130, upTo: Number.POSITIVE_INFINITY, factor: 0.0608 },
];

/** Of formula and factors. */
export const runOutSource: Citation = {
  source: 'en-1011-2',
  at: 'run-out length formula and its factors, as in BS 5135',
  known: 'memory',
};

/** The classes that the course’s electrodes fall in; look at the maker’s data sheet of yours. */
export const runOutFactorOf = { E7018: 0.0472, E6010: 0.0368, E6011: 0.0368 } as const;
