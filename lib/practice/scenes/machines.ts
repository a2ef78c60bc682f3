/** Machine and cables: duty cycle, losses, the drooping line. */
import type { Scene } from '../scene.ts';

const rated = {
  ratedCurrent: ['200 A', '225 A', '250 A', '300 A'],
  ratedDutyCycle: ['20 percent', '40 percent', '60 percent'],
};

export default {
  'load-voltage': [
    {
      told: [
        'A stick machine is tested at {current}.',
        'The rating plate of a stick machine gives a point at {current}.',
      ],
      asked: { voltage: 'Which load voltage belongs to that current by the convention?' },
    },
  ],
  'duty-cycle': [
    {
      told: [
        'A machine is rated {ratedCurrent} at {ratedDutyCycle} duty cycle. You weld with {current}.',
        'The plate says {ratedCurrent} at {ratedDutyCycle}, and your procedure asks for {current}.',
      ],
      asked: {
        dutyCycle: 'What duty cycle does it stand at your current?',
        weldMinutes: 'How long may you weld in each ten minutes?',
        restMinutes: 'How long must it cool in each ten minutes?',
      },
      values: {
        ratedCurrent: ['200 A', '225 A'],
        ratedDutyCycle: ['20 percent', '40 percent'],
        current: ['130 A', '140 A', '150 A', '160 A', '180 A'],
      },
    },
  ],
  'duty-current': [
    {
      told: [
        'A machine is rated {ratedCurrent} at {ratedDutyCycle} duty cycle, and you want to weld at {dutyCycle}.',
        'The plate says {ratedCurrent} at {ratedDutyCycle}. Your work needs a duty cycle of {dutyCycle}.',
      ],
      asked: { current: ['How much current may you draw?', 'What current does it stand then?'] },
      values: { ...rated, dutyCycle: ['60 percent', '80 percent', '100 percent'] },
    },
  ],
  'cable-drop': [
    {
      told: [
        'Your circuit has {length} of {gauge} copper cable, out and back, and carries {current}.',
        'A current of {current} goes through {gauge} copper cable, {length} out and back.',
      ],
      asked: {
        drop: ['How many volts are lost in the cables?', 'What is the voltage drop?'],
        longest: 'How much cable, out and back, loses no more than four volts?',
      },
      values: {
        gauge: ['4 AWG', '2 AWG', '1 AWG', '1/0 AWG', '2/0 AWG'],
        length: {
          us: ['50 ft', '75 ft', '100 ft', '150 ft'],
          metric: ['15 m', '20 m', '30 m', '45 m'],
        },
      },
    },
  ],
  'circuit-limit': [
    {
      told: [
        'A stick machine gives {currentKind}; its plate shows {openCircuitVoltage} open circuit.',
        'You read {openCircuitVoltage} of open-circuit voltage on the plate of a machine that gives {currentKind}.',
      ],
      asked: { within: 'Is that at or under the limit for manual welding?' },
      values: {
        openCircuitVoltage: ['70 V', '75 V', '80 V', '85 V', '95 V', '100 V', '110 V'],
      },
    },
  ],
  'source-line': [
    {
      told: [
        'A drooping machine: {openCircuitVoltage} open, {shortCircuitCurrent} shorted. The arc needs {arcVoltageAtZero} as it gets short and {voltsPerMm} more; you hold it {arcLength} long.',
        'You hold an arc of {arcLength} on a machine with {openCircuitVoltage} open circuit and {shortCircuitCurrent} short circuit. The arc starts at {arcVoltageAtZero} and rises {voltsPerMm}.',
      ],
      asked: { voltage: 'What is the arc voltage?', current: 'What current flows?' },
      values: {
        openCircuitVoltage: ['70 V', '75 V', '80 V'],
        shortCircuitCurrent: ['160 A', '180 A', '200 A'],
        arcVoltageAtZero: ['15 V'],
        voltsPerMm: ['2.5 V/mm'],
        arcLength: {
          us: ['3/32 in', '1/8 in', '5/32 in', '3/16 in'],
          metric: ['2.5 mm', '3 mm', '4 mm', '5 mm'],
        },
      },
    },
  ],
  'source-slope': [
    {
      told: [
        'With a short arc the meters show {shortArcVoltage} and {shortArcCurrent}; with a long one {longArcVoltage} and {longArcCurrent}.',
        'You read {shortArcCurrent} at {shortArcVoltage}, then stretch the arc and read {longArcCurrent} at {longArcVoltage}.',
      ],
      asked: {
        slope: 'How many volts does the machine lose for each ampere more?',
        openCircuitVoltage: 'Where does its line meet no current?',
      },
      values: {
        shortArcVoltage: ['20 V', '21 V', '22 V'],
        shortArcCurrent: ['125 A', '127 A', '130 A'],
        longArcVoltage: ['28 V', '30 V', '32 V'],
        longArcCurrent: ['100 A', '105 A', '108 A'],
      },
    },
  ],
} satisfies Readonly<Record<string, readonly Scene[]>>;
