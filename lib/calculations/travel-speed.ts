import { defineFormula } from '../calculation.ts';

export default defineFormula({
  title: 'Travel speed',
  summary: 'How fast the electrode moved along the joint, from a timed bead.',
  inputs: {
    beadLength: {
      label: 'Bead length',
      symbol: 'L',
      unit: 'in',
      limits: {
        min: 0.1,
        max: 1200,
        why: 'a shorter bead cannot be timed, a longer one is no single run',
      },
      usual: {
        min: 1,
        max: 40,
        why: 'one electrode runs out between {1 in} and {40 in}',
      },
      example: { us: '7', metric: '180' },
      obtain: 'Rule along the bead, from where it started to the middle of the crater.',
    },
    arcTime: {
      label: 'Arc time',
      symbol: 't',
      unit: 's',
      limits: {
        min: 1,
        max: 3600,
        why: 'nobody times less than a second, and no electrode burns an hour',
      },
      usual: {
        min: 10,
        max: 180,
        why: 'an electrode burns between {10 s} and {180 s}',
      },
      example: '70',
      obtain: 'A partner times from strike to break with a phone or a watch.',
    },
  },
  outputs: {
    travelSpeed: {
      label: 'Travel speed',
      symbol: 'v',
      unit: 'in/min',
      digits: 2,
      formula: '60 * beadLength / arcTime',
    },
  },
  cite: [{ source: 'geometry', at: 'length over time', known: 'derived' }],
  related: ['heat-input', 'rod-check'],
  compute({ beadLength, arcTime }) {
    return { travelSpeed: (60 * beadLength) / arcTime };
  },
});
