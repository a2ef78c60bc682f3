import type { Inputs } from '../calculation.ts';

/** A joint on a pipe that cannot be turned, and one point of it. */
export const fixedPipe = {
  pipeInclination: {
    label: 'Inclination of the pipe’s axis',
    symbol: 'α',
    unit: 'deg',
    limits: { min: 0, max: 90, why: 'a pipe lies between level and upright' },
    example: '45',
    obtain: 'Angle finder on the pipe: 0 level (5G), 45 (6G), 90 upright (2G).',
  },
  clockAngle: {
    label: 'Angle from the top of the joint',
    symbol: 'θ',
    unit: 'deg',
    limits: { min: 0, max: 360, why: 'once round the pipe' },
    example: '120',
    obtain:
      'Each hour of the clock is {30 deg}: one o’clock 30, three o’clock 90, six o’clock 180. Either way round gives the same position.',
  },
} as const satisfies Inputs;
