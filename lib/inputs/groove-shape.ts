/** The section of a groove with straight sides, and the cap on it. */
import type { Inputs } from '../calculation.ts';

export const grooveShape = {
  thickness: {
    label: 'Plate thickness',
    symbol: 'T',
    unit: 'in',
    limits: { min: 0.02, max: 12, why: 'no plate of this course is thinner or thicker' },
    usual: { min: 0.1, max: 2, why: 'practice plates are {1/8 in} to {2 in} thick' },
    example: { us: '3/8', metric: '10' },
    obtain: 'Caliper on the edge.',
  },
  rootOpening: {
    label: 'Root opening',
    symbol: 'g',
    unit: 'in',
    limits: { min: 0, max: 4, why: 'a wider one is no joint' },
    usual: { min: 0, max: 0.5, why: 'root openings go up to {1/2 in}, on backing' },
    example: { us: '1/4', metric: '6' },
    obtain: 'Gauge or drill shank between the plates, at both ends, after tacking.',
  },
  includedAngle: {
    label: 'Groove angle',
    symbol: 'α',
    unit: 'deg',
    limits: { min: 0, max: 120, why: 'a wider groove is cut by nobody' },
    usual: { min: 0, max: 90, why: 'groove angles are usually 20° to 75°' },
    example: '45',
    obtain: 'Both bevels together: two bevels of 22-1/2° make 45°. With one bevel, that bevel.',
  },
  rootFace: {
    label: 'Root face',
    symbol: 'f',
    unit: 'in',
    limits: { min: 0, max: 12, why: 'it is part of the thickness' },
    example: { us: '0', metric: '0' },
    default: '0 in',
    obtain: 'The blunt edge left at the root. On backing the edge is sharp: 0.',
  },
  capHeight: {
    label: 'Height of the cap above the plate',
    symbol: 'r',
    unit: 'in',
    limits: { min: 0, max: 0.25, why: 'no code leaves more standing' },
    usual: {
      min: 0,
      max: 0.125,
      why: 'up to 1 in of thickness the code allows {1/8 in|3 mm}',
      cite: { source: 'aws-d1.1', at: 'groove weld profiles', known: 'memory' },
    },
    example: { us: '1/16', metric: '1.5' },
    default: '0 in',
    obtain: 'You choose it: {1/16 in} is neat.',
  },
} as const satisfies Inputs;
