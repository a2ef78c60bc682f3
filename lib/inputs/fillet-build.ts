/** How a fillet is built up: its leg, its passes and the metal in the bulge of its face. */
import type { Inputs } from '../calculation.ts';

/** Of an equal-leg fillet. */
export const filletLeg = {
  label: 'Leg of the fillet',
  symbol: 'z',
  unit: 'in',
  limits: { min: 0.03, max: 4, why: 'no fillet weld is smaller or larger' },
  usual: { min: 0.125, max: 1, why: 'fillets are usually {1/8 in} to {1 in}' },
  example: { us: '5/16', metric: '8' },
  obtain: 'On the drawing, to the left of the fillet symbol; on a weld, by a fillet gauge.',
} as const satisfies Inputs[string];

/** Passes and bulge. */
export const filletBuild = {
  passes: {
    label: 'Passes',
    symbol: 'n',
    unit: '1',
    limits: { min: 1, max: 100, why: 'a fillet has at least one pass, and nobody counts to more' },
    whole: true,
    example: '1',
    default: '1',
    obtain: 'Count them on the section, or as you lay them.',
  },
  bulgeShare: {
    label: 'Metal in the bulge of the face, in percent of the triangle',
    symbol: 'q',
    unit: 'percent',
    limits: { min: 0, max: 100, why: 'a bulge as large as the fillet is no fillet' },
    usual: {
      min: 0,
      max: 25,
      why: 'a good face carries about a tenth more than the flat triangle',
      cite: { source: 'common-practice', known: 'practice' },
    },
    example: '10',
    default: '10',
    obtain: 'Take a tenth. A flat face has 0.',
  },
} as const satisfies Inputs;
