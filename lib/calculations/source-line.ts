import { defineFormula } from '../calculation.ts';
import { NoAnswer } from '../no-answer.ts';

/**
 * The arc's voltage grows with its length; the machine gives less current the more voltage is asked
 * of it. Where the two lines cross, the arc burns.
 */
export default defineFormula({
  title: 'Arc length on a drooping machine (an illustration)',
  summary: 'Why a longer arc shifts volts and amperes: two straight lines that cross.',
  inputs: {
    openCircuitVoltage: {
      label: 'Open-circuit voltage',
      symbol: 'U_0',
      unit: 'V',
      limits: {
        min: 10,
        max: 1000,
        why: 'outside this it is no welding machine, not even in a textbook',
      },
      usual: { min: 40, max: 113, why: 'stick machines idle between {40 V} and {113 V}' },
      example: '75',
      obtain: 'Rating plate, U₀. Never probe it: a qualified person measures.',
    },
    shortCircuitCurrent: {
      label: 'Short-circuit current',
      symbol: 'I_s',
      unit: 'A',
      limits: {
        min: 10,
        max: 5000,
        why: 'outside this it is no welding machine, not even in a textbook',
      },
      usual: { min: 50, max: 1000, why: 'stick machines of a school give {50 A} to {1000 A}' },
      example: '180',
      obtain:
        'The straight line through two meter readings, a short arc and a long one, ends there.',
      estimateBy: 'source-slope',
    },
    arcVoltageAtZero: {
      label: 'Arc voltage as the length goes to nothing',
      symbol: 'U_a',
      unit: 'V',
      limits: { min: 0, max: 200, why: 'more is no welding arc' },
      usual: { min: 10, max: 30, why: 'it lies between {10 V} and {30 V} for a covered electrode' },
      example: '15',
      obtain: 'An assumption: take {15 V} to see the picture.',
    },
    voltsPerMm: {
      label: 'Rise of arc voltage with arc length',
      symbol: 'k',
      unit: 'V/mm',
      limits: { min: 0, max: 60, why: 'more is no welding arc' },
      usual: {
        min: 0.5,
        max: 6,
        why: 'it lies between {0.5 V/mm} and {6 V/mm} for a covered electrode',
      },
      example: '2.5',
      obtain: 'An assumption: take {2.5 V/mm} to see the picture.',
    },
    arcLength: {
      label: 'Arc length',
      symbol: 'L',
      unit: 'mm',
      limits: { min: 0, max: 50, why: 'longer, and no arc burns' },
      usual: {
        min: 1,
        max: 8,
        why: 'an arc is {1/32 in} to {5/16 in} long, and should be no longer than the core is thick',
      },
      example: { us: '1/8', metric: '3.2' },
      obtain:
        'From the end of the core wire to the pool; try the core’s diameter, then twice that.',
    },
  },
  outputs: {
    voltage: {
      label: 'Arc voltage',
      symbol: 'U',
      unit: 'V',
      digits: 2,
      formula: 'arcVoltageAtZero + voltsPerMm * arcLength',
    },
    current: {
      label: 'Current',
      symbol: 'I',
      unit: 'A',
      digits: 2,
      formula: 'shortCircuitCurrent * (1 - voltage / openCircuitVoltage)',
    },
    power: {
      label: 'Power in the arc',
      symbol: 'P',
      unit: 'kW',
      digits: 2,
      formula: 'voltage * current / 1000',
    },
  },
  beware: [
    'An illustration. Machines with hot start and arc force do not follow a straight line, and no arc does so quite. Do not set a machine or compute a heat input by it.',
  ],
  cite: [{ source: 'gate', at: 'power source problems, straight lines', known: 'read' }],
  related: ['source-slope', 'heat-input'],
  compute({ openCircuitVoltage, shortCircuitCurrent, arcVoltageAtZero, voltsPerMm, arcLength }) {
    const voltage = arcVoltageAtZero + voltsPerMm * arcLength;
    if (voltage >= openCircuitVoltage)
      throw new NoAnswer(
        'The arc goes out: it would need as much voltage as the machine gives with no current flowing',
        'arcLength',
      );
    const current = shortCircuitCurrent * (1 - voltage / openCircuitVoltage);
    return { voltage, current, power: (voltage * current) / 1000 };
  },
});
