import { defineFormula, type Reason } from '../calculation.ts';
import { circularSegment } from '../geometry/circular-segment.ts';
import { filletLeg } from '../inputs/fillet-build.ts';
import { NoAnswer } from '../no-answer.ts';
import { citeConvexity, convexityLimits, faceRow, faceRowTexts } from '../tables/convexity-d1.1.ts';
import { convert } from '../units.ts';

/**
 * A square tee with equal legs whose face is an arc from toe to toe. The code counts no metal
 * above the straight line between the toes, and all that is missing below it.
 */
export default defineFormula({
  title: 'Convex and concave fillets',
  summary: 'What a bulging or hollow face does to the throat, the size and the metal used.',
  inputs: {
    leg: { ...filletLeg, label: 'Leg, measured to the toes' },
    bulge: {
      label: 'Bulge of the face: convex above zero, concave below',
      symbol: 'C',
      unit: 'in',
      limits: { min: -1, max: 1, why: 'no face stands off its toes that far' },
      usual: { min: -0.125, max: 0.1875, why: 'codes end at {3/16 in|5 mm} of convexity' },
      example: { us: '1/16', metric: '1.5' },
      obtain:
        'Straightedge from toe to toe, feeler or gauge under it. A hollow face is negative: −{1/16 in}.',
    },
  },
  outputs: {
    faceWidth: {
      label: 'Width of the face, toe to toe',
      symbol: 'W',
      unit: 'in',
      digits: 3,
      formula: 'sqrt(2) * leg',
    },
    area: {
      label: 'Section area',
      symbol: 'A',
      unit: 'in2',
      digits: 3,
      formula:
        'abs(bulge) < 0.0001 * faceWidth ? leg^2 / 2 + 2 / 3 * faceWidth * bulge : leg^2 / 2 + (bulge / 2 + faceWidth^2 / (8 * bulge))^2 * 2 * atan(2 * bulge / faceWidth) - faceWidth / 2 * (faceWidth^2 / (8 * bulge) - bulge / 2)',
    },
    theoreticalThroat: {
      label: 'Throat to the straight line between the toes',
      symbol: 't_0',
      unit: 'in',
      digits: 3,
      formula: 'leg / sqrt(2)',
    },
    actualThroat: {
      label: 'Throat to the face itself',
      symbol: 't',
      unit: 'in',
      digits: 3,
      formula: 'theoreticalThroat + bulge',
    },
    effectiveSize: {
      label: 'Size that counts',
      symbol: 'z_e',
      unit: 'in',
      digits: 3,
      round: { to: '1/16 in|0.5 mm', way: 'down' },
      formula: 'min(leg, sqrt(2) * actualThroat)',
    },
  },
  beware: [
    'For two equal legs on a square tee. With unequal legs the shorter one is the size, and a hollow face is judged at the throat.',
  ],
  cite: [
    { source: 'geometry', at: 'triangle and circular segment', known: 'derived' },
    { source: 'aws-d1.1', at: '2010 clause 2.4: effective throat', known: 'read' },
    citeConvexity,
  ],
  related: ['convexity-limit', 'fillet-throat'],
  notes({ bulge }, { faceWidth }) {
    if (bulge < 0)
      return [
        {
          text: 'A hollow face has no convexity to judge; what counts is whether its throat still meets the size.',
        },
      ];
    const row = faceRow(faceWidth, 'us');
    const { us, metric } = convexityLimits[row];
    const allowed: Reason = {
      kind: 'row',
      text: `By the code ${faceRowTexts[row]}.`,
      cite: citeConvexity,
    };
    // Between the two printed figures the reader's own system decides, which is not known here.
    if (bulge <= Math.max(us, convert(metric, 'mm', 'in'))) return [allowed];
    return [allowed, { kind: 'caution', text: 'This face bulges more than that.' }];
  },
  compute({ leg, bulge }) {
    const faceWidth = Math.SQRT2 * leg;
    const theoreticalThroat = leg / Math.SQRT2;
    if (bulge > faceWidth / 2)
      throw new NoAnswer(
        'A face that bulges more than half its width is a bead that never wetted in',
        'bulge',
      );
    if (bulge < hollowest * leg)
      throw new NoAnswer(
        'A face so hollow would cut into the plates before it reached the toes',
        'bulge',
      );
    const actualThroat = theoreticalThroat + bulge;
    return {
      faceWidth,
      area: leg ** 2 / 2 + circularSegment(faceWidth, bulge),
      theoreticalThroat,
      actualThroat,
      effectiveSize: Math.min(leg, Math.SQRT2 * actualThroat),
    };
  },
});

/** A quarter circle that touches both plates: the arc dips 1 − 1/√2 of the leg. */
const hollowest = Math.SQRT1_2 - 1;
