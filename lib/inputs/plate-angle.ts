/** The angle between the plates of a tee, as the calculations on fillets ask for it. */
import type { QuantityInput } from '../calculation.ts';

export const plateAngle = {
  label: 'Angle between the plates',
  symbol: 'ψ',
  unit: 'deg',
  limits: {
    min: 10,
    max: 170,
    why: 'outside this the two plates lie flat on each other or in one line',
  },
  usual: {
    min: 60,
    max: 135,
    why: 'the structural code counts it as a fillet from 60° to 135°; sharper corners lose metal at the root, wider ones need a groove',
    cite: { source: 'aws-d1.1', at: '2010 clause 2.4.2.6', known: 'read' },
  },
  example: '90',
  default: '90',
  obtain: 'Protractor in the corner to be welded. A square tee is 90°.',
} as const satisfies QuantityInput;
