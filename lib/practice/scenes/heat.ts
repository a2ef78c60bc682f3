/** The arc: current to begin with, voltage, heat. */
import type { Scene } from '../scene.ts';

export default {
  'heat-input': [
    {
      told: [
        'You weld at {voltage} and {current} and travel {travelSpeed}.',
        'The meters show {current} and {voltage}; your travel speed is {travelSpeed}.',
        'A partner writes down your bead: {voltage}, {current}, {travelSpeed}.',
      ],
      asked: {
        arcEnergy: ['How much arc energy is that, which AWS and ASME call heat input?'],
        heatInput:
          'The arc efficiency is {efficiency}. How much heat input is that, as EN counts it?',
      },
      values: { voltage: ['20 V', '21 V', '22 V', '23 V', '24 V', '25 V', '26 V'] },
    },
  ],
  'travel-speed-limits': [
    {
      told: [
        'The procedure allows {maximum} of arc energy at most. You weld at {voltage} and {current}.',
        'At {voltage} and {current} the arc energy must not go above {maximum}.',
      ],
      asked: { slowest: ['How slow may you travel?', 'What is the slowest travel speed?'] },
      values: {
        voltage: ['20 V', '22 V', '24 V', '26 V'],
        maximum: {
          us: ['30 kJ/in', '40 kJ/in', '50 kJ/in', '55 kJ/in'],
          metric: ['1.2 kJ/mm', '1.6 kJ/mm', '2 kJ/mm', '2.2 kJ/mm'],
        },
      },
    },
  ],
  'starting-current': [
    {
      told: [
        'You begin {use} with a {diameter} {classification} in the {position} position.',
        'The machine is not set yet. The sheet says {classification}, {diameter}, {position} position; you weld {use}.',
      ],
      asked: {
        suggested: ['What current do you set first?', 'At what current do you start?'],
        low: 'What is the lowest current to try?',
        high: 'What is the highest current to try?',
      },
      values: {
        use: [{ typed: 'fill and fillet', said: 'a fillet' }],
        classification: ['E7018', 'E6010', 'E6011'],
      },
    },
  ],
  'voltage-estimate': [
    {
      told: [
        'An {classification} of {coreDiameter} burns off {consumedLength} in {arcTime} at {current}.',
        'You burn {consumedLength} of a {coreDiameter} {classification} in {arcTime}, and the meter shows {current}.',
      ],
      asked: { voltage: 'What was the arc voltage, about?' },
      values: {
        classification: ['E7018'],
        coreDiameter: { us: ['1/8 in'], metric: ['3.2 mm'] },
        consumedLength: { us: ['11 in', '12 in'], metric: ['280 mm', '300 mm'] },
        arcTime: ['55 s', '60 s', '65 s'],
        current: ['115 A', '120 A', '125 A'],
      },
    },
  ],
} satisfies Readonly<Record<string, readonly Scene[]>>;
