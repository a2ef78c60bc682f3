/** A pipe as it is ordered: nominal size and schedule. */
import type { Inputs } from '../calculation.ts';
import { npsSizes, schedules } from '../tables/pipe-b36.10.ts';

export const orderedPipe = {
  nps: {
    label: 'Nominal pipe size (NPS)',
    choices: npsSizes,
    example: '6',
    obtain:
      'Stenciled on the pipe and on the order. It is a name: below NPS 14 no diameter of the pipe measures it.',
  },
  schedule: {
    label: 'Schedule',
    choices: schedules,
    example: '80',
    obtain: 'Stenciled beside the size: 40, 80, 120, 160, or STD, XS, XXS.',
  },
} as const satisfies Inputs;
