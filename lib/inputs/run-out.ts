/** What the run-out calculations ask about an electrode that was burned. */
import type { QuantityInput } from '../calculation.ts';
import { runOutSource } from '../tables/run-out-factors.ts';

export const coreDiameter = {
  label: 'Core wire diameter',
  symbol: 'd',
  unit: 'mm',
  limits: { min: 1, max: 8, why: 'covered electrodes are made from {1/16 in} to {5/16 in}' },
  usual: {
    min: 2,
    max: 6.5,
    why: 'the formula was fitted to electrodes from {3/32 in|2.5 mm} to {1/4 in|6 mm}',
    cite: runOutSource,
  },
  example: { us: '1/8', metric: '3.2' },
  obtain: 'Printed on the box; it is the wire without its coating.',
} as const satisfies QuantityInput;

export const consumedLength = {
  label: 'Electrode burned off',
  symbol: 'L',
  unit: 'mm',
  limits: { min: 10, max: 900, why: 'no electrode is longer, and a shorter piece says nothing' },
  usual: {
    min: 150,
    max: 450,
    why: 'a whole electrode averages out the start and the crater; a short piece does not',
  },
  example: { us: '12', metric: '300' },
  obtain: 'Rule along a new electrode, less the stub that is left.',
} as const satisfies QuantityInput;

export const runOut = {
  label: 'Run-out: bead length from that electrode',
  symbol: 'R',
  unit: 'mm',
  limits: { min: 5, max: 3000, why: 'one electrode runs out shorter than a long step' },
  usual: {
    min: 50,
    max: 500,
    why: 'an electrode runs out over {2 in} to {20 in}; look whether the bead came from one electrode',
  },
  example: { us: '8', metric: '200' },
  obtain: 'Rule along the bead that this one electrode left, start to middle of the crater.',
} as const satisfies QuantityInput;

export const runOutFactor = {
  label: 'Run-out factor of the electrode',
  symbol: 'F',
  unit: 'kJ/mm3',
  limits: { min: 0.01, max: 0.2, why: 'no covered electrode needs so little or so much heat' },
  usual: {
    min: 0.0368,
    max: 0.0608,
    why: 'the factors of the standard run from 0.0368 to 0.0608',
    cite: runOutSource,
  },
  example: '0.0472',
  default: '0.0472',
  obtain:
    'By the electrode’s nominal efficiency on its data sheet: 0.0368 up to 95 %, 0.0408 up to 110 %, 0.0472 up to 130 % (most E7018), 0.0608 above.',
} as const satisfies QuantityInput;
