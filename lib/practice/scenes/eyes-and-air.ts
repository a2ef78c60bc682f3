/** Eyes and lungs: filter shade, ventilation. */
import type { Scene } from '../scene.ts';

const shade = {
  told: [
    'You burn a {diameter} electrode at {current}.',
    'The machine is set to {current} for a {diameter} electrode.',
  ],
  asked: {
    startShade: 'With which shade do you start?',
    minimumShade: 'What is the lightest shade that US federal law lets you use?',
  },
};

export default {
  'filter-shade': [
    {
      ...shade,
      values: {
        diameter: { us: ['3/32 in'], metric: ['2.4 mm'] },
        current: ['70 A', '80 A', '90 A'],
      },
    },
    {
      ...shade,
      values: {
        diameter: { us: ['1/8 in'], metric: ['3.2 mm'] },
        current: ['100 A', '115 A', '125 A', '135 A'],
      },
    },
    {
      ...shade,
      values: {
        diameter: { us: ['5/32 in'], metric: ['4 mm'] },
        current: ['140 A', '155 A', '165 A', '180 A'],
      },
    },
  ],
  'ventilation-check': [
    {
      told: [
        'At once {welders} welders work in a room of {roomVolume} whose ceiling is {ceilingHeight} high; air across the room is {crossFlow}.',
        'A shop holds {roomVolume} under a ceiling of {ceilingHeight}, with air across it {crossFlow}. {welders} arcs burn at once.',
      ],
      asked: {
        room: 'What does the room rule of US law ask for?',
        spacePerWelder: 'How much room has each welder?',
      },
      values: {
        welders: ['4', '6', '8', '14'],
        roomVolume: {
          us: ['50000 ft3', '80000 ft3', '120000 ft3'],
          metric: ['1400 m3', '2200 m3', '3400 m3'],
        },
        ceilingHeight: { us: ['14 ft', '15 ft', '18 ft'], metric: ['4.2 m', '4.5 m', '5.5 m'] },
      },
    },
  ],
} satisfies Readonly<Record<string, readonly Scene[]>>;
