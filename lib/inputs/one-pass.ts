/** The metal of one pass: as an area, or from the electrode that lays it. */
import type { Inputs } from '../calculation.ts';
import { beadPerElectrode } from './bead-per-electrode.ts';
import { electrode } from './electrode.ts';

export const onePass = {
  passArea: {
    label: 'Section area of one pass',
    symbol: 'a',
    unit: 'in2',
    limits: { min: 0.001, max: 0.5, why: 'no hand lays a smaller or larger pass' },
    usual: {
      min: 0.01,
      max: 0.06,
      why: 'covered electrodes lay {0.01 in2} to {0.06 in2} a pass',
    },
    example: '',
    optional: true,
    obtain:
      'Leave it out, and it follows from the electrode and its run-out. Given, it rules over them.',
  },
  ...electrode,
  runOut: beadPerElectrode,
} as const satisfies Inputs;
