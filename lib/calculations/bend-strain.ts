import { defineFormula } from '../calculation.ts';

/** The outer fibers of a strip bent round a mandrel, its middle keeping its length. */
export default defineFormula({
  title: 'Bend strain',
  summary: 'How far the outer face of a bend specimen is stretched round the mandrel.',
  inputs: {
    thickness: {
      label: 'Thickness of the specimen',
      symbol: 't',
      unit: 'in',
      limits: { min: 0.02, max: 4, why: 'no bend specimen is thinner or thicker' },
      usual: {
        min: 0.0625,
        max: 0.5,
        why: 'specimens are {1/16 in} to {1/2 in} thick; a side bend from {1 in} plate is a slice {3/8 in} thick, and the slice counts',
      },
      example: { us: '3/8', metric: '10' },
      obtain:
        'Caliper on the prepared strip, not on the plate it was cut from. A side bend is usually {3/8 in} thick.',
    },
    mandrelDiameter: {
      label: 'Diameter of the mandrel',
      symbol: 'A',
      unit: 'in',
      limits: { min: 0.02, max: 60, why: 'no bend jig has a smaller or larger mandrel' },
      usual: { min: 0.5, max: 5, why: 'jigs carry mandrels of {1/2 in} to {5 in}' },
      example: { us: '1-1/2', metric: '40' },
      obtain:
        'Caliper on the plunger, or its stamp. Four times the thickness is usual for mild steel.',
    },
  },
  outputs: {
    strain: {
      label: 'Strain of the outer face',
      symbol: 'e',
      unit: 'percent',
      digits: 3,
      formula: '100 * thickness / (mandrelDiameter + thickness)',
    },
  },
  beware: [
    'The strain says how hard the test is. Whether the specimen passes is judged on its outer face after bending.',
    'A bend press stores force: guard closed, stand aside, never in line with the specimen.',
  ],
  cite: [{ source: 'asme-ix', at: '2010 QW-466.1, note b', known: 'read' }],
  related: ['test-range'],
  compute({ thickness, mandrelDiameter }) {
    return { strain: (100 * thickness) / (mandrelDiameter + thickness) };
  },
});
