import { defineFormula } from '../calculation.ts';
import {
  maximumCurrent,
  ratedCurrent,
  ratedDutyCycle,
  refuseAbovePlate,
} from '../inputs/rating-plate.ts';

export default defineFormula({
  title: 'Duty cycle at your current',
  summary:
    'How many minutes in each ten a machine can weld at a current that its plate does not list.',
  inputs: {
    ratedCurrent,
    ratedDutyCycle,
    current: {
      label: 'Current you weld with',
      symbol: 'I',
      unit: 'A',
      limits: { min: 5, max: 2000, why: 'no stick machine gives less or more' },
      example: '250',
      obtain: 'Clamp meter on the work lead while the arc burns, or the dial.',
    },
    maximumCurrent,
  },
  constants: {
    period: {
      value: 10,
      symbol: 'T',
      unit: 'min',
      name: 'period of the duty cycle',
      cite: { source: 'power-source-manuals', at: '2.06 Duty cycle', known: 'read' },
    },
  },
  outputs: {
    dutyCycle: {
      label: 'Duty cycle at your current, an estimate',
      symbol: 'X',
      unit: 'percent',
      digits: 2,
      formula: 'min(100, ratedDutyCycle * (ratedCurrent / current)^2)',
    },
    weldMinutes: {
      label: 'Welding in each ten minutes, at most',
      symbol: 't_weld',
      unit: 'min',
      digits: 2,
      formula: 'period * dutyCycle / 100',
    },
    restMinutes: {
      label: 'Cooling in each ten minutes, machine on and idle',
      symbol: 't_rest',
      unit: 'min',
      digits: 2,
      formula: 'period - weldMinutes',
    },
  },
  beware: [
    'The square law is an estimate: it follows the heat in the windings. Where the plate has a column for your current, the plate rules; measured plates lie several percent to either side.',
    'The plate is for air at {40 degC} or cooler. Each ten minutes stand alone: a long rest does not buy a longer weld.',
    'Holder, cables and work clamp have ratings of their own, often lower than the machine’s.',
  ],
  cite: [
    { source: 'power-source-manuals', at: '2.06 Duty cycle', known: 'read' },
    { source: 'iec-60974-1', at: 'duty cycle over ten minutes', known: 'memory' },
  ],
  related: ['duty-current', 'load-voltage'],
  compute({ ratedCurrent, ratedDutyCycle, current, maximumCurrent }) {
    refuseAbovePlate(current, { ratedCurrent, maximumCurrent }, 'current');
    const dutyCycle = Math.min(100, ratedDutyCycle * (ratedCurrent / current) ** 2);
    const weldMinutes = (10 * dutyCycle) / 100;
    return { dutyCycle, weldMinutes, restMinutes: 10 - weldMinutes };
  },
});
