/** What codes ask of a fillet: least and largest leg, strength, bulge. */
import type { Scene } from '../scene.ts';

const near = { us: ['1/4 in', '5/16 in', '3/8 in'], metric: ['6 mm', '8 mm', '10 mm'] };

export default {
  'fillet-minimum': [
    {
      told: [
        'By {code} you weld {thinner} plate to {thicker} plate with {electrodeKind} electrodes.',
        'A joint of {thinner} and {thicker} plate is welded with {electrodeKind} electrodes; the code is {code}.',
      ],
      asked: {
        minimumLeg: 'What is the smallest leg allowed?',
        maximumLegAtEdge: 'Along the edge of the thinner plate, in a lap: what is the largest leg?',
      },
      values: {
        thinner: near,
        thicker: {
          us: ['1/2 in', '5/8 in', '3/4 in', '1 in'],
          metric: ['12 mm', '16 mm', '20 mm', '25 mm'],
        },
        electrodeKind: [
          'low-hydrogen',
          { typed: 'not low-hydrogen', said: 'ordinary (not low-hydrogen)' },
        ],
      },
    },
  ],
  'fillet-strength': [
    {
      told: [
        'Two equal fillets, leg {leg}, each {length} long, weld metal {electrodeStrength}, are pulled {loadAngle}.',
        'A lug hangs on two fillets of {length} each with legs of {leg}. The weld metal is {electrodeStrength}; the load pulls {loadAngle}.',
      ],
      asked: {
        design: 'What is their design strength (LRFD)?',
        allowable: 'What is their allowable strength (ASD)?',
      },
      values: {
        leg: near,
        length: {
          us: ['4 in', '6 in', '8 in', '10 in'],
          metric: ['100 mm', '150 mm', '200 mm', '250 mm'],
        },
        welds: ['2'],
        electrodeStrength: { us: ['60 ksi', '70 ksi'], metric: ['430 MPa', '490 MPa'] },
        loadAngle: [
          { typed: '0 deg', said: 'along their length' },
          { typed: '90 deg', said: 'square across their length' },
        ],
      },
    },
  ],
  'convexity-limit': [
    {
      told: [
        'The face of a fillet is {faceWidth} wide.',
        'From toe to toe a single bead of a fillet measures {faceWidth}.',
      ],
      asked: { convexityLimit: 'How far may it bulge by AWS D1.1?' },
      values: {
        faceWidth: {
          us: ['1/4 in', '5/16 in', '7/16 in', '5/8 in', '1-1/8 in'],
          metric: ['6 mm', '8 mm', '11 mm', '16 mm', '28 mm'],
        },
      },
    },
  ],
} satisfies Readonly<Record<string, readonly Scene[]>>;
