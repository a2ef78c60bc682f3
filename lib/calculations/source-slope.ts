import { defineFormula, type QuantityInput } from '../calculation.ts';
import { NoAnswer } from '../no-answer.ts';

const voltage = {
  unit: 'V',
  limits: { min: 1, max: 1000, why: 'outside this no arc burns' },
  usual: { min: 12, max: 60, why: 'a covered electrode burns between {12 V} and {60 V}' },
} as const;
const current = {
  unit: 'A',
  limits: { min: 1, max: 5000, why: 'outside this no welding arc burns' },
} as const;
const partner = 'A partner reads the panel meter, or clamp meter and voltmeter, while you hold';

export default defineFormula({
  title: 'A machine’s slope from two arcs (an illustration)',
  summary:
    'The straight line through two meter readings, one with a short arc and one with a long arc.',
  inputs: {
    shortArcVoltage: {
      ...voltage,
      label: 'Voltage with a short arc',
      symbol: 'U_1',
      example: '22',
      obtain: `${partner} a short arc.`,
    },
    shortArcCurrent: {
      ...current,
      label: 'Current with a short arc',
      symbol: 'I_1',
      example: '127',
      obtain: 'At the same moment.',
    },
    longArcVoltage: {
      ...voltage,
      label: 'Voltage with a long arc',
      symbol: 'U_2',
      example: '30',
      obtain: `${partner} a long arc, flat, on scrap.`,
    },
    longArcCurrent: {
      ...current,
      label: 'Current with a long arc',
      symbol: 'I_2',
      example: '108',
      obtain: 'At the same moment.',
    },
  } satisfies Record<string, QuantityInput>,
  outputs: {
    slope: {
      label: 'Volts lost for each ampere more',
      symbol: 's',
      unit: 'V/A',
      digits: 2,
      formula: '(longArcVoltage - shortArcVoltage) / (shortArcCurrent - longArcCurrent)',
    },
    openCircuitVoltage: {
      label: 'Where the line meets no current',
      symbol: 'U_0',
      unit: 'V',
      digits: 2,
      formula: 'shortArcVoltage + slope * shortArcCurrent',
    },
    shortCircuitCurrent: {
      label: 'Where the line meets no voltage',
      symbol: 'I_s',
      unit: 'A',
      digits: 2,
      formula: 'openCircuitVoltage / slope',
    },
  },
  beware: [
    'An illustration: the ends of the line are far from the two readings. What the machine really gives at no load stands on its plate, and nobody probes it.',
    'Hot start and arc force bend the line. Two readings close together say little.',
  ],
  cite: [
    { source: 'gate', at: 'ME 2016, power source problem', known: 'read' },
    { source: 'geometry', at: 'a line through two points', known: 'derived' },
  ],
  related: ['source-line'],
  compute({ shortArcVoltage, shortArcCurrent, longArcVoltage, longArcCurrent }) {
    if (longArcVoltage <= shortArcVoltage)
      throw new NoAnswer(
        'A longer arc needs more volts: look at the readings again',
        'longArcVoltage',
      );
    if (longArcCurrent >= shortArcCurrent)
      throw new NoAnswer(
        'A drooping machine gives less current into a longer arc; a machine that does not is no case for this line',
        'longArcCurrent',
      );
    const slope = (longArcVoltage - shortArcVoltage) / (shortArcCurrent - longArcCurrent);
    const openCircuitVoltage = shortArcVoltage + slope * shortArcCurrent;
    return { slope, openCircuitVoltage, shortCircuitCurrent: openCircuitVoltage / slope };
  },
});
