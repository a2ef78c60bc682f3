import { defineFormula } from '../calculation.ts';
import { arcVoltage, travelSpeed, weldingCurrent } from '../inputs/arc.ts';

export default defineFormula({
  title: 'Arc energy and heat input',
  summary:
    'How much energy each inch of weld receives from the arc, and how much of it the metal keeps.',
  inputs: {
    voltage: arcVoltage,
    current: weldingCurrent,
    travelSpeed,
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
  related: ['travel-speed', 'travel-speed-limits', 'run-out-heat', 'preheat-cet', 'cooling-time'],
  compute({ voltage, current, travelSpeed, efficiency }) {
    const arcEnergy = (60 * voltage * current) / (1000 * travelSpeed);
    return { arcEnergy, heatInput: efficiency * arcEnergy };
  },
});
