import type { Inputs } from '../calculation.ts';

/** The two angles by which the position figures name a position: AWS A3.0, ASME IX QW-461.1. */
export const weldAngles = {
  axisInclination: {
    label: 'Inclination of the weld’s axis',
    symbol: 'I',
    unit: 'deg',
    limits: { min: 0, max: 90, why: 'a weld lies between level and straight up' },
    example: '30',
    obtain: 'Angle finder along the joint: 0 level, 90 straight up.',
  },
  faceRotation: {
    label: 'Rotation of the face, 180 looking up, 0 looking down',
    symbol: 'R',
    unit: 'deg',
    limits: { min: 0, max: 360, why: 'once round the axis' },
    example: '180',
    obtain:
      'Hold a pencil square to the face of the weld. Pointing as far up as it can: 180. As far down as it can: 0. Level to one side: 90, to the other 270.',
  },
} as const satisfies Inputs;
