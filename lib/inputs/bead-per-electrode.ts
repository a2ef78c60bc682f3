import type { QuantityInput } from '../calculation.ts';

/** How far one electrode runs out along the joint. */
export const beadPerElectrode = {
  label: 'Run-out: bead length from one electrode',
  symbol: 'R',
  unit: 'in',
  limits: { min: 0.5, max: 60, why: 'no electrode lays less or more' },
  usual: { min: 3, max: 16, why: 'an electrode usually lays {3 in} to {16 in} of bead' },
  example: { us: '7-1/2', metric: '190' },
  obtain:
    'Burn one electrode down to the stub at the speed you mean to keep, and measure the bead.',
} as const satisfies QuantityInput;
