import { defineFormula } from '../calculation.ts';
import { arcVoltage, weldingCurrent } from '../inputs/arc.ts';

export default defineFormula({
  title: 'Travel speed inside a heat input limit',
  summary: 'How slow and how fast you may travel when the procedure limits heat input.',
  inputs: {
    voltage: arcVoltage,
    current: weldingCurrent,
    maximum: {
      label: 'Highest heat input of the procedure (arc energy, without efficiency)',
      symbol: 'E_max',
      unit: 'kJ/in',
      limits: { min: 1, max: 500, why: 'no covered electrode gives less or more' },
      usual: { min: 15, max: 110, why: 'covered electrodes give {15 kJ/in} to {110 kJ/in}' },
      example: { us: '55', metric: '2.2' },
      obtain: 'From the welding procedure. A limit from EN is with efficiency: divide it by 0.8.',
    },
    leastShare: {
      label: 'Lowest heat input, in percent of the highest',
      symbol: 'p',
      unit: 'percent',
      limits: { min: 1, max: 100, why: 'it is a share of the highest' },
      default: '60',
      example: '60',
      obtain: 'From the welding procedure; bridge work often has 60 %.',
    },
  },
  outputs: {
    minimum: {
      label: 'Lowest heat input',
      symbol: 'E_min',
      unit: 'kJ/in',
      digits: 3,
      formula: 'maximum * leastShare / 100',
    },
    slowest: {
      label: 'No slower than',
      symbol: 'v_min',
      unit: 'in/min',
      digits: 2,
      formula: '60 * voltage * current / (1000 * maximum)',
    },
    fastest: {
      label: 'No faster than',
      symbol: 'v_max',
      unit: 'in/min',
      digits: 2,
      formula: '60 * voltage * current / (1000 * minimum)',
    },
  },
  beware: [
    'Measured volts and amperes only: a guess has no place beside a limit.',
    'Run-out does the same with a rule: a longer bead from each electrode is less heat.',
  ],
  cite: [
    { source: 'navsea-248', at: 'para 4-4.1.13.2', known: 'read' },
    { source: 'fabricator-procedure', at: 'lowest heat input 60 % of the highest', known: 'read' },
  ],
  related: ['heat-input', 'travel-speed', 'run-out-length'],
  compute({ voltage, current, maximum, leastShare }) {
    const minimum = (maximum * leastShare) / 100;
    return {
      minimum,
      slowest: (60 * voltage * current) / (1000 * maximum),
      fastest: (60 * voltage * current) / (1000 * minimum),
    };
  },
});
