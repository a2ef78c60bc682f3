/** Volts, amperes and speed of a burning arc, as the heat calculations ask for them. */
import type { QuantityInput } from '../calculation.ts';

export const arcVoltage = {
  label: 'Arc voltage',
  symbol: 'U',
  unit: 'V',
  limits: { min: 5, max: 100, why: 'outside this no welding arc burns' },
  usual: {
    min: 16,
    max: 40,
    why: 'a covered electrode burns between {16 V} and {40 V}; look at the meter again',
    cite: { source: 'common-practice', known: 'memory' },
  },
  example: '22',
  obtain:
    'Read it on a meter from holder to work while a partner welds. Without a meter, time a whole electrode, or guess {22 V}, give or take {2 V}, for a {1/8 in} E7018.',
  estimateBy: 'voltage-estimate',
} as const satisfies QuantityInput;

export const weldingCurrent = {
  label: 'Welding current',
  symbol: 'I',
  unit: 'A',
  limits: {
    min: 5,
    max: 2000,
    why: 'outside this no covered electrode runs',
  },
  usual: {
    min: 20,
    max: 550,
    why: 'covered electrodes run between {20 A} and {550 A}',
  },
  example: '125',
  obtain: 'Read it on a clamp meter round the work lead; the dial may be off by several amperes.',
} as const satisfies QuantityInput;

export const travelSpeed = {
  label: 'Travel speed',
  symbol: 'v',
  unit: 'in/min',
  limits: {
    min: 0.1,
    max: 200,
    why: 'slower or faster than any hand moves an electrode',
  },
  usual: {
    min: 2,
    max: 20,
    why: 'by hand {2 in/min} to {20 in/min} is usual',
  },
  example: { us: '6', metric: '150' },
  obtain: 'Time a bead and measure it.',
  estimateBy: 'travel-speed',
} as const satisfies QuantityInput;
