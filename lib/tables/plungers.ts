/**
 * Which plunger bends which strap, for the steels of this course: up to {50 ksi} yield, a fifth and
 * more of elongation. Figures as printed in both systems.
 */
import type { Citation, Printed } from '../calculation.ts';
import type { Code } from './test-positions.ts';

/** ASME IX QW-466.1, "all others": 3/8 in round 1-1/2 in; thinner straps round four times their thickness. */
const thick = { us: 3 / 8, metric: 10 };
const standard = { us: 1.5, metric: 38.1 };
/** Of the plunger that each code gives. */
export const plungerCites: Readonly<Record<Code, Citation>> = {
  'AWS D1.1': {
    source: 'aws-d1.1',
    at: 'guided-bend jig, yield to 50 ksi: Figure 4.15 (2010), 6.11 (2020)',
    known: 'memory',
  },
  'ASME IX': { source: 'asme-ix', at: '2010 QW-466.1', known: 'read' },
};

export type PlungerFit = 'as the table' | 'too large' | 'too small' | 'strap too thick';

/** What a shop's rounding of a diameter takes from the strain is less than a reading of it. */
const slack = 0.02;

/**
 * Whether a plunger of this diameter is the one that the code's table gives for the strap. A larger
 * one stretches less than the test asks for; a smaller one stretches more.
 * @returns the fit, and the diameters in the strap's own system between which the table lies
 */
export function plungerFit(
  code: Code,
  strap: Printed,
  diameter: number,
): { fit: PlungerFit; from: number; to: number } {
  const { system, value } = strap;
  const [full, jig] = [thick[system], standard[system]];
  // AWS D1.1 prints one jig for this steel; ASME IX scales it for a thinner strap.
  const times = code === 'ASME IX' && value < full * (1 - slack) ? [4 * value] : [jig, 4 * full];
  const [from, to] = [Math.min(...times), Math.max(...times)];
  const fit =
    value > full * (1 + slack)
      ? 'strap too thick'
      : diameter > to * (1 + slack)
        ? 'too large'
        : diameter < from * (1 - slack)
          ? 'too small'
          : 'as the table';
  return { fit, from, to };
}
