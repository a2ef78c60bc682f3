import { defineProcedure, type Reason } from '../calculation.ts';
import {
  citeConvexity,
  convexityLimits,
  type FaceRow,
  faceRow,
  faceRowTexts,
} from '../tables/convexity-d1.1.ts';

export default defineProcedure({
  title: 'How far a face may bulge',
  summary:
    'The most convexity that the structural code accepts on a fillet or on one of its beads.',
  inputs: {
    faceWidth: {
      label: 'Width of the face or of the single bead',
      symbol: 'W',
      printed: { us: 'in', metric: 'mm' },
      limits: { min: 0.03, max: 6, why: 'no bead or fillet face is narrower or wider' },
      example: { us: '7/16', metric: '11' },
      obtain: 'Rule or caliper from toe to toe, straight across.',
    },
  },
  outputs: {
    convexityLimit: {
      label: 'Most convexity',
      symbol: 'C',
      printed: { us: 'in', metric: 'mm' },
      fraction: 16,
    },
  },
  beware: [
    'The contract’s code and edition decide. Before about 2000 the rule was a sloping one: 0.07 of the face and {0.06 in} more (from memory).',
  ],
  cite: [citeConvexity],
  related: ['fillet-profile'],
  compute({ faceWidth }) {
    const used = faceRow(faceWidth.value, faceWidth.system);
    const because: Reason[] = [
      { kind: 'row', text: `Used: ${faceRowTexts[used]}.`, cite: citeConvexity },
      ...(Object.keys(faceRowTexts) as FaceRow[])
        .filter((row) => row !== used)
        .map((row) => ({ kind: 'passed' as const, text: `Not used: ${faceRowTexts[row]}.` })),
    ];
    return { convexityLimit: convexityLimits[used], because };
  },
});
