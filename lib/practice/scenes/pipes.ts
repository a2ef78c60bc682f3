/** Pipe: sizes, the way round, the groove. */
import type { Scene } from '../scene.ts';

const small = {
  nps: ['2', '3', '4', '6', '8'],
  schedule: ['40', '80'],
};

export default {
  'clock-travel': [
    {
      told: [
        'A pipe is {outsideDiameter} across. You travel {travelSpeed}, and one electrode runs {runOut}.',
        'You go round a pipe of {outsideDiameter} outside diameter at {travelSpeed}, with {runOut} from an electrode.',
      ],
      asked: {
        circumference: 'How far is it once round the pipe?',
        hourLength: 'How long is one hour of the clock on it?',
        hourTime: 'How long does the arc burn for one hour of the clock?',
        electrodes: 'How many electrodes does one pass round take?',
      },
      values: {
        outsideDiameter: {
          us: ['2.375 in', '4.5 in', '6.625 in', '8.625 in'],
          metric: ['60.3 mm', '114.3 mm', '168.3 mm', '219.1 mm'],
        },
        runOut: { us: ['4 in', '5 in', '6 in'], metric: ['100 mm', '125 mm', '150 mm'] },
        travelSpeed: {
          us: ['3 in/min', '4 in/min', '5 in/min', '6 in/min'],
          metric: ['80 mm/min', '100 mm/min', '125 mm/min', '150 mm/min'],
        },
      },
    },
  ],
  'pipe-size': [
    {
      told: [
        'The drawing names a pipe NPS {nps}, schedule {schedule}.',
        'On the rack lies NPS {nps} pipe of schedule {schedule}.',
      ],
      asked: {
        outsideDiameter: 'What is its outside diameter?',
        wall: 'How thick is its wall?',
        insideDiameter: 'What is its inside diameter?',
      },
      values: small,
    },
  ],
  'pipe-groove': [
    {
      told: [
        'NPS {nps} pipe, schedule {schedule}, is beveled {bevelAngle} on each end and fitted with {rootOpening} of opening and {rootFace} of root face.',
        'A pipe joint, NPS {nps} schedule {schedule}: bevel {bevelAngle} each, root opening {rootOpening}, root face {rootFace}.',
      ],
      asked: {
        faceWidth: 'How wide is the groove outside?',
        area: 'How large is the section of the groove, cap not counted?',
      },
      values: {
        ...small,
        rootOpening: { us: ['3/32 in', '1/8 in', '5/32 in'], metric: ['2.5 mm', '3 mm', '4 mm'] },
        rootFace: { us: ['1/16 in', '3/32 in', '1/8 in'], metric: ['1.5 mm', '2.5 mm', '3 mm'] },
      },
    },
  ],
} satisfies Readonly<Record<string, readonly Scene[]>>;
