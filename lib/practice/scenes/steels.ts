/** Steel and heat: carbon equivalents, preheat, cooling. */
import type { Scene } from '../scene.ts';

const percent = (text: string) => text.split(' ').map((value) => `${value} percent`);
const chemistry = {
  carbon: percent('0.12 0.15 0.17 0.18 0.2'),
  manganese: percent('0.7 0.85 1 1.2 1.35'),
  silicon: percent('0.2 0.22 0.25 0.3'),
  copper: percent('0.1 0.2 0.25'),
  nickel: percent('0.05 0.1'),
  chromium: percent('0.05 0.1'),
  molybdenum: percent('0.02'),
  vanadium: percent('0'),
  niobium: percent('0'),
  boron: percent('0'),
};

export default {
  'carbon-equivalent': [
    {
      told: [
        'A mill report says: carbon {carbon}, manganese {manganese}, silicon {silicon}, copper {copper}, nickel {nickel}, chromium {chromium}, molybdenum {molybdenum}, nothing else.',
        'The paper of a plate lists C {carbon}, Mn {manganese}, Si {silicon}, Cu {copper}, Ni {nickel}, Cr {chromium}, Mo {molybdenum}, and no other alloy.',
      ],
      asked: {
        ceIIW:
          'What is its carbon equivalent by the formula of the International Institute of Welding?',
        ceAWS: 'What is its CE by AWS D1.1, silicon counted?',
        pcm: 'What is its Pcm?',
      },
      values: chemistry,
    },
  ],
  'preheat-cet': [
    {
      told: [
        'Plate of {thickness} with a CET of {cet} is welded with {heatInput}; the electrode brings {hydrogen} of hydrogen, and the steel is at {ambient}.',
        'CET {cet}, plate {thickness}, hydrogen {hydrogen}, heat input {heatInput} with efficiency, steel at {ambient}.',
      ],
      asked: { temperature: 'What preheat does the CET method give?' },
      values: {
        cet: percent('0.3 0.32 0.34 0.36'),
        thickness: {
          us: ['1 in', '1-1/4 in', '1-1/2 in', '2 in'],
          metric: ['25 mm', '30 mm', '40 mm', '50 mm'],
        },
        hydrogen: ['4 ml/100g', '5 ml/100g', '8 ml/100g'],
        heatInput: { us: ['25 kJ/in', '30 kJ/in'], metric: ['1 kJ/mm', '1.2 kJ/mm'] },
        ambient: { us: ['68 degF'], metric: ['20 degC'] },
      },
    },
  ],
  'preheat-minimum': [
    {
      told: [
        'The thickest part at a weld is {thickness} of {steel}, and you weld with {electrodeKind} electrodes.',
        'You weld {steel}, {thickness} at its thickest, with {electrodeKind} electrodes.',
      ],
      asked: {
        minimumTemperature: 'How warm must it be at least, by the table of AWS D1.1?',
        category: 'Which category of the table is that?',
      },
      values: {
        steel: ['A36', 'A53 Grade B', 'A106 Grade B'],
        electrodeKind: [
          'low-hydrogen',
          { typed: 'not low-hydrogen', said: 'ordinary (not low-hydrogen)' },
        ],
        thickness: {
          us: ['3/8 in', '1/2 in', '3/4 in', '1 in', '1-1/2 in', '2 in', '3 in'],
          metric: ['10 mm', '12 mm', '18 mm', '25 mm', '32 mm', '50 mm', '75 mm'],
        },
      },
    },
  ],
  'cooling-time': [
    {
      told: [
        'Plate of {thickness} starts at {startTemperature} and gets {heatInput}, efficiency counted. Bead on plate, so both shape factors are 1.',
        'You lay a bead with {heatInput}, efficiency counted, on {thickness} plate at {startTemperature}; both shape factors are 1.',
      ],
      asked: {
        regime: 'Does the plate cool as a thick one or as a thin one?',
        time: 'How long does it take from 800 to 500 °C?',
      },
      values: {
        heatInput: {
          us: ['20 kJ/in', '25 kJ/in', '30 kJ/in', '35 kJ/in'],
          metric: ['0.8 kJ/mm', '1 kJ/mm', '1.2 kJ/mm', '1.4 kJ/mm'],
        },
        shapeFactor2d: ['1'],
        shapeFactor3d: ['1'],
      },
    },
  ],
} satisfies Readonly<Record<string, readonly Scene[]>>;
