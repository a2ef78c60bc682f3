/** What the yard sells and what the saw takes. */
import type { Inputs } from '../calculation.ts';

export const barStock = {
  barLength: {
    label: 'Length of a bar',
    symbol: 'L',
    unit: 'in',
    limits: { min: 1, max: 1200, why: 'no yard sells a longer bar' },
    example: { us: '240', metric: '6000' },
    default: '240 in',
    obtain: 'The supplier’s list.',
  },
  pipeLength: {
    label: 'Length of a pipe',
    symbol: 'P',
    unit: 'in',
    limits: { min: 1, max: 1200, why: 'no yard sells a longer pipe' },
    example: { us: '252', metric: '6000' },
    default: '252 in',
    obtain: 'The supplier’s list; {21 ft} is a usual single length.',
  },
  kerf: {
    label: 'Width of the cut (kerf)',
    symbol: 'k',
    unit: 'in',
    limits: { min: 0, max: 1, why: 'no shop saw cuts wider' },
    example: { us: '1/16', metric: '1.6' },
    default: '1/16 in',
    obtain: 'About {1/16 in} for a band saw, {1/8 in} for an abrasive wheel or plasma.',
  },
  trim: {
    label: 'Trimmed off each bar, its cut included',
    symbol: 't',
    unit: 'in',
    limits: { min: 0, max: 24, why: 'more than that is a piece of its own' },
    example: { us: '1/2', metric: '12' },
    default: '0 in',
    obtain: 'What has to go because the end of the bar is bent, sheared or painted.',
  },
} as const satisfies Inputs;
