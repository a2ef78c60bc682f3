import { defineFormula } from '../calculation.ts';

export default defineFormula({
  title: 'Arc energy and heat input',
  summary:
    'How much energy each inch of weld receives from the arc, and how much of it the metal keeps.',
  inputs: {
    voltage: {
      label: 'Arc voltage',
      symbol: 'U',
      unit: 'V',
      limits: { min: 5, max: 100, why: 'outside this no welding arc burns' },
      usual: {
        min: 16,
        max: 40,
        why: 'a covered electrode burns between {16 V} and {40 V}; look at the meter again',
        cite: { source: 'common-practice', known: 'memory' },
      },
      example: '22',
      obtain:
        'Read it on a meter from holder to work while a partner welds. Without a meter, time a whole electrode, or guess {23 V}, give or take {2 V}, for a {1/8 in} E7018.',
      estimateBy: 'voltage-estimate',
    },
    current: {
      label: 'Welding current',
      symbol: 'I',
      unit: 'A',
      limits: {
        min: 5,
        max: 2000,
        why: 'outside this no covered electrode runs',
      },
      usual: {
        min: 20,
        max: 550,
        why: 'covered electrodes run between {20 A} and {550 A}',
      },
      example: '125',
      obtain:
        'Read it on a clamp meter round the work lead; the dial may be off by several amperes.',
    },
    travelSpeed: {
      label: 'Travel speed',
      symbol: 'v',
      unit: 'in/min',
      limits: {
        min: 0.1,
        max: 200,
        why: 'slower or faster than any hand moves an electrode',
      },
      usual: {
        min: 2,
        max: 20,
        why: 'by hand {2 in/min} to {20 in/min} is usual',
      },
      example: { us: '6', metric: '150' },
      obtain: 'Time a bead and measure it.',
      estimateBy: 'travel-speed',
    },
    efficiency: {
      label: 'Arc (thermal) efficiency',
      symbol: 'η',
      unit: '1',
      limits: {
        min: 0.1,
        max: 1,
        why: 'it is the share of the arc’s energy that reaches the metal',
      },
      example: '0.8',
      default: '0.8',
      obtain: 'ISO/TR 17671-1 gives 0.8 for shielded metal arc welding.',
    },
  },
  outputs: {
    arcEnergy: {
      label: 'Arc energy (AWS and ASME call this heat input)',
      symbol: 'E',
      unit: 'kJ/in',
      digits: 2,
      formula: '60 * voltage * current / (1000 * travelSpeed)',
    },
    heatInput: {
      label: 'Heat input (EN: with arc efficiency)',
      symbol: 'Q',
      unit: 'kJ/in',
      digits: 2,
      formula: 'efficiency * arcEnergy',
    },
  },
  beware: [
    'Two names that are easily mixed: a limit from AWS or ASME is on arc energy, with no efficiency in it. A limit from EN is on heat input.',
    'With a guessed voltage the answer is good to about one part in ten, so two figures are all it deserves.',
  ],
  cite: [
    { source: 'navsea-248', at: 'para 4-4.1.13.2', known: 'read' },
    {
      source: 'iso-tr-17671-1',
      at: 'thermal efficiency factor',
      known: 'read',
    },
  ],
  related: ['travel-speed', 'run-out-heat', 'preheat-cet', 'cooling-time'],
  compute({ voltage, current, travelSpeed, efficiency }) {
    const arcEnergy = (60 * voltage * current) / (1000 * travelSpeed);
    return { arcEnergy, heatInput: efficiency * arcEnergy };
  },
});
