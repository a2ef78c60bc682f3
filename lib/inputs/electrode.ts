/**
 * What is asked about an electrode wherever its weld metal is computed. The defaults are a
 * 1/8 in E7018 as the demo shop burns it: it leaves about 0.042 lb of weld metal, so that it runs
 * 7.6 in along a 3/16 in fillet (common practice).
 */
import type { Inputs } from '../calculation.ts';

export const electrode = {
  diameter: {
    label: 'Electrode diameter (core wire)',
    symbol: 'd',
    unit: 'in',
    limits: {
      min: 0.04,
      max: 0.3125,
      why: 'covered electrodes are made from {1/16 in} to {5/16 in}',
    },
    example: { us: '1/8', metric: '3.2' },
    default: '1/8 in',
    obtain: 'Printed on the box; it is the wire without its coating.',
  },
  electrodeLength: {
    label: 'Electrode length',
    symbol: 'L_e',
    unit: 'in',
    limits: { min: 6, max: 36, why: 'covered electrodes are made from {9 in} to {28 in}' },
    example: { us: '14', metric: '350' },
    default: '14 in',
    obtain: 'Rule along a new electrode, grip end included.',
  },
  stub: {
    label: 'Stub length',
    symbol: 's',
    unit: 'in',
    limits: { min: 0, max: 30, why: 'a stub is part of the electrode' },
    usual: { min: 1, max: 4, why: 'a stub of {2 in} wastes little and keeps the holder cool' },
    example: { us: '2', metric: '50' },
    default: '2 in',
    obtain: 'Measure a few stubs from the bin; learners leave longer ones.',
  },
  coatingFraction: {
    label: 'Coating, as a share of the whole electrode’s mass',
    symbol: 'c',
    unit: '1',
    limits: { min: 0, max: 0.7, why: 'more coating than core is no electrode of this course' },
    usual: {
      min: 0.08,
      max: 0.4,
      why: 'E6010 has 0.10 to 0.15, E7018 0.25 to 0.35',
      cite: { source: 'common-practice', known: 'memory' },
    },
    example: '0.30',
    default: '0.30',
    obtain: 'Crack the coating off one electrode and weigh it with and without.',
  },
  recovery: {
    label: 'Deposition efficiency (stub not counted)',
    symbol: 'r',
    unit: '1',
    limits: { min: 0.2, max: 1, why: 'no electrode leaves more than it weighs' },
    usual: {
      min: 0.55,
      max: 0.8,
      why: 'about 0.70 for E7018 and 0.67 for E6010',
      cite: { source: 'common-practice', known: 'memory' },
    },
    example: '0.70',
    default: '0.70',
    obtain:
      'Weigh the plate before and after, and the electrodes with their stubs. This is weld metal per mass melted; ISO 2401 counts recovery against the core wire and gets a larger figure.',
  },
  density: {
    label: 'Density of the weld metal',
    symbol: 'ρ',
    unit: 'lb/in3',
    limits: { min: 0.05, max: 0.8, why: 'no metal that is arc welded is lighter or heavier' },
    usual: { min: 0.275, max: 0.295, why: 'steel is close to {0.283 lb/in3|7850 kg/m3}' },
    example: { us: '0.2836', metric: '7850' },
    default: '7850 kg/m3',
    obtain: 'Leave it as it is for steel. Some printed tables take {0.283 lb/in3}.',
  },
} as const satisfies Inputs;
