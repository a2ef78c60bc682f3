import { defineFormula } from '../calculation.ts';
import {
  maximumCurrent,
  ratedCurrent,
  ratedDutyCycle,
  refuseAbovePlate,
} from '../inputs/rating-plate.ts';

export default defineFormula({
  title: 'Current for a duty cycle',
  summary: 'How much current a machine can give if you need to weld a larger share of the time.',
  inputs: {
    ratedCurrent,
    ratedDutyCycle,
    dutyCycle: {
      label: 'Duty cycle you need, in percent',
      symbol: 'X',
      unit: 'percent',
      limits: { min: 5, max: 100, why: 'a share of each ten minutes, and plates start at 5 %' },
      example: '100',
      obtain: 'Minutes of arc in each ten minutes, times ten. A busy booth seldom passes 40 %.',
    },
    maximumCurrent,
  },
  outputs: {
    current: {
      label: 'Current at that duty cycle, an estimate',
      symbol: 'I',
      unit: 'A',
      digits: 3,
      formula: 'ratedCurrent * sqrt(ratedDutyCycle / dutyCycle)',
    },
  },
  beware: [
    'The square law is an estimate. Where the plate has a column for this duty cycle, the plate rules.',
    'The plate is for air at {40 degC} or cooler, and holder, cables and work clamp have ratings of their own.',
  ],
  cite: [{ source: 'power-source-manuals', at: '2.06 Duty cycle', known: 'read' }],
  related: ['duty-cycle', 'load-voltage'],
  compute({ ratedCurrent, ratedDutyCycle, dutyCycle, maximumCurrent }) {
    const current = ratedCurrent * Math.sqrt(ratedDutyCycle / dutyCycle);
    refuseAbovePlate(current, { ratedCurrent, maximumCurrent }, 'dutyCycle');
    return { current };
  },
});
