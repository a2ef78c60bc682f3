/**
 * Resistance of welding cable. The AWG rows are uncoated copper at 75 °C, a cable hot from work;
 * the metric rows are flexible copper at 20 °C, as their standard gives them, a fifth lower for the
 * same copper.
 */
import type { Citation } from '../calculation.ts';

interface Cable {
  /** Ohms for each thousand feet, or for each kilometer, as printed. */
  resistance: number;
  per: 'thousand feet' | 'kilometer';
}

const thousandFeet = (resistance: number): Cable => ({ resistance, per: 'thousand feet' });
const kilometer = (resistance: number): Cable => ({ resistance, per: 'kilometer' });

/** By the size printed on the jacket. */
export const cables = {
  '6 AWG': thousandFeet(0.491),
  '4 AWG': thousandFeet(0.308),
  '3 AWG': thousandFeet(0.245),
  '2 AWG': thousandFeet(0.194),
  '1 AWG': thousandFeet(0.154),
  '1/0 AWG': thousandFeet(0.122),
  '2/0 AWG': thousandFeet(0.0967),
  '3/0 AWG': thousandFeet(0.0766),
  '4/0 AWG': thousandFeet(0.0608),
  '16 mm2': kilometer(1.21),
  '25 mm2': kilometer(0.78),
  '35 mm2': kilometer(0.554),
  '50 mm2': kilometer(0.386),
  '70 mm2': kilometer(0.272),
  '95 mm2': kilometer(0.206),
} as const satisfies Record<string, Cable>;

export type Gauge = keyof typeof cables;
/** Sizes in the order of the table. */
export const gauges = Object.keys(cables) as Gauge[];

/** Of the AWG rows. */
export const awgSource: Citation = {
  source: 'nec',
  at: 'Chapter 9, Table 8, uncoated copper, direct current',
  known: 'memory',
};
/** Of the rows in square millimeters. */
export const metricSource: Citation = {
  source: 'iec-60228',
  at: 'class 5 flexible copper at 20 °C',
  known: 'memory',
};

const meter = { 'thousand feet': 304.8, kilometer: 1000 };

/** Ohms for each meter of cable. */
export function ohmsPerMeter(gauge: Gauge): number {
  const { resistance, per } = cables[gauge];
  return resistance / meter[per];
}
