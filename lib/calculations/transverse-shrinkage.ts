import { defineFormula } from '../calculation.ts';

export default defineFormula({
  title: 'Shrinkage across a butt weld',
  summary: 'How much two free plates draw together; two rules are shown because they disagree.',
  forEngineers: true,
  inputs: {
    area: {
      label: 'Section area of the weld',
      symbol: 'A',
      unit: 'in2',
      limits: { min: 0.001, max: 50, why: 'no weld is smaller or larger' },
      example: { us: '0.15', metric: '97' },
      obtain: 'Groove and cap together.',
      estimateBy: 'groove-area',
    },
    thickness: {
      label: 'Plate thickness',
      symbol: 't',
      unit: 'in',
      limits: { min: 0.1, max: 8, why: 'the rules are for plate' },
      usual: { min: 0.25, max: 2, why: 'the rules come from plates of {1/4 in} to {2 in}' },
      example: { us: '3/8', metric: '10' },
      obtain: 'Caliper on the edge.',
    },
    rootOpening: {
      label: 'Root opening',
      symbol: 'g',
      unit: 'in',
      limits: { min: 0, max: 1, why: 'a wider one is no joint' },
      example: { us: '1/4', metric: '6' },
      obtain: 'Gauge between the plates after tacking.',
    },
  },
  outputs: {
    shrinkageLow: {
      label: 'By the lower rule',
      symbol: 'S_1',
      unit: 'in',
      digits: 2,
      formula: '0.1 * area / thickness',
    },
    shrinkageHigh: {
      label: 'By the higher rule',
      symbol: 'S_2',
      unit: 'in',
      digits: 2,
      formula: '0.2 * area / thickness + 0.05 * rootOpening',
    },
  },
  beware: [
    'The rules differ by a factor of two or more: use them to see that plates move, not to cut metal to size. A trial piece tells the truth.',
    'For large plates free to move. Small coupons that soak up heat, tacked or clamped parts and pipe do otherwise; on a pipe of NPS 2 this says nothing.',
  ],
  cite: [
    {
      source: 'common-practice',
      at: 'lower rule, flush welds on free plates, as a contractor quotes it',
      known: 'read',
    },
    { source: 'common-practice', at: 'higher rule, from handbooks', known: 'memory' },
  ],
  related: ['groove-area'],
  compute: ({ area, thickness, rootOpening }) => ({
    shrinkageLow: (0.1 * area) / thickness,
    shrinkageHigh: (0.2 * area) / thickness + 0.05 * rootOpening,
  }),
});
