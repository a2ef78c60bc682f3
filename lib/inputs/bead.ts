/** Width, height and overlap of a bead, as every calculation on beads asks for them. */
import type { QuantityInput } from '../calculation.ts';

export const beadWidth = {
  label: 'Bead width',
  symbol: 'w',
  unit: 'in',
  limits: { min: 0.02, max: 4, why: 'no bead is narrower or wider' },
  usual: {
    min: 0.1,
    max: 1,
    why: 'a bead from a covered electrode is {1/8 in} to {1 in} wide',
  },
  example: { us: '3/8', metric: '10' },
  obtain: 'Caliper across a single bead, toe to toe.',
} as const satisfies QuantityInput;

export const beadHeight = {
  label: 'Bead height',
  symbol: 'h',
  unit: 'in',
  limits: { min: 0.005, max: 2, why: 'no bead is lower or higher' },
  usual: {
    min: 0.03,
    max: 0.25,
    why: 'a bead stands {1/32 in} to {1/4 in} above the plate',
  },
  example: { us: '3/32', metric: '2.5' },
  obtain: 'Depth gauge or two rules: from the plate to the crown.',
} as const satisfies QuantityInput;

export const beadOverlap = {
  label: 'Bead overlap (step-over), in percent of the width',
  symbol: 'p',
  unit: 'percent',
  limits: {
    min: 0,
    max: 95,
    why: 'below 0 the beads do not touch, above 95 they lie on top of each other',
  },
  usual: {
    min: 25,
    max: 60,
    why: 'padding beads usually lie over a third to half of the last one',
    cite: { source: 'common-practice', known: 'practice' },
  },
  example: '50',
  obtain: 'You choose it. Half is the usual aim for padding.',
} as const satisfies QuantityInput;
