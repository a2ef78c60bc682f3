/** Fillets: throat and leg, face, passes, metal. */
import type { Scene } from '../scene.ts';

const near = { us: ['1/4 in', '5/16 in', '3/8 in'], metric: ['6 mm', '8 mm', '10 mm'] };
const passAreas = {
  us: ['0.025 in2', '0.03 in2', '0.035 in2'],
  metric: ['16 mm2', '20 mm2', '24 mm2'],
};

export default {
  'fillet-throat': [
    {
      told: [
        'A tee stands at {angle}. The legs of its fillet measure {legA} and {legB}, and the face is flat.',
        'You measure the legs of a flat fillet between plates at {angle}: {legA} and {legB}.',
      ],
      asked: {
        throat: ['How thick is the throat?', 'What is the throat, root to face?'],
        faceWidth: 'How wide is the face, toe to toe?',
      },
      values: { legA: near, legB: near, angle: ['90 deg'] },
    },
  ],
  'fillet-leg': [
    {
      told: [
        'The drawing asks for a throat of {throat} in a tee of {angle}.',
        'A flat fillet between plates at {angle} needs a throat of {throat}.',
      ],
      asked: {
        leg: ['How long must each leg be?', 'Which leg do you weld?'],
        faceWidth: 'How wide is its face then, toe to toe?',
      },
      values: {
        throat: {
          us: ['0.15 in', '0.18 in', '0.2 in', '0.22 in', '0.25 in', '0.27 in'],
          metric: ['3.5 mm', '4 mm', '5 mm', '5.5 mm', '6 mm', '7 mm'],
        },
        angle: ['90 deg'],
      },
    },
  ],
  'fillet-profile': [
    {
      told: [
        'A fillet measures {leg} from the corner to each toe. Its face {bulge}.',
        'Both legs of a fillet are {leg}, and its face {bulge}.',
      ],
      asked: {
        effectiveSize: 'Which leg size counts?',
        actualThroat: 'How far is it from the root to the face itself?',
        faceWidth: 'How wide is the face, toe to toe?',
      },
      values: {
        leg: near,
        bulge: {
          us: [
            { typed: '1/16 in', said: 'stands out by {1/16 in}' },
            { typed: '1/32 in', said: 'stands out by {1/32 in}' },
            { typed: '-1/32 in', said: 'is hollow by {1/32 in}' },
            { typed: '-1/16 in', said: 'is hollow by {1/16 in}' },
          ],
          metric: [
            { typed: '1.5 mm', said: 'stands out by {1.5 mm}' },
            { typed: '1 mm', said: 'stands out by {1 mm}' },
            { typed: '-1 mm', said: 'is hollow by {1 mm}' },
            { typed: '-1.5 mm', said: 'is hollow by {1.5 mm}' },
          ],
        },
      },
    },
  ],
  'fillet-passes': [
    {
      told: [
        'A flat-faced fillet shall have legs of {leg}, welded {position}. Each pass lays {passArea} of section.',
        'You weld a fillet with a flat face and legs of {leg} in the {position} position; the section of a pass is {passArea}.',
      ],
      asked: {
        passes: ['How many passes are needed?', 'How many passes make it?'],
        jointArea: 'How large is the section of the whole weld?',
      },
      values: {
        passArea: passAreas,
        convexity: { us: ['0 in'], metric: ['0 mm'] },
        leg: { us: ['5/16 in', '3/8 in', '1/2 in'], metric: ['8 mm', '10 mm', '12 mm'] },
        position: ['horizontal', 'flat'],
      },
    },
  ],
  'fillet-weight': [
    {
      told: [
        'A fillet has legs of {leg}, and the bulge of its face adds {bulgeShare} to the triangle. Steel weighs {density}.',
        'Count {bulgeShare} of bulge on a fillet with legs of {leg}, and {density} for steel.',
      ],
      asked: {
        area: 'How large is its section?',
        massPerLength: ['How much weld metal does each foot or meter take?'],
      },
      values: { bulgeShare: ['10 percent', '15 percent'] },
    },
  ],
} satisfies Readonly<Record<string, readonly Scene[]>>;
