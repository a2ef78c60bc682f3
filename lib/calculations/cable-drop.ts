import { defineProcedure, type Reason } from '../calculation.ts';
import {
  awgSource,
  cables,
  type Gauge,
  gauges,
  metricSource,
  ohmsPerMeter,
} from '../tables/cable-resistance.ts';

const practice = { source: 'common-practice', known: 'practice' } as const;
/** Volts in both cables together that a shop puts up with. */
const tooMuch = 4;

export default defineProcedure({
  title: 'Voltage lost in the cables',
  summary: 'How many volts the electrode cable and the work lead take before the arc gets any.',
  inputs: {
    gauge: {
      label: 'Cable size',
      choices: gauges,
      example: '2 AWG',
      obtain: 'Printed on the jacket.',
    },
    length: {
      label: 'Cable in the circuit, out and back',
      symbol: 'L',
      unit: 'ft',
      limits: { min: 1, max: 3000, why: 'no welding cable is shorter or longer' },
      example: { us: '100', metric: '30' },
      obtain: 'Electrode cable and work lead added together, coiled lengths too.',
    },
    current: {
      label: 'Welding current',
      symbol: 'I',
      unit: 'A',
      limits: { min: 5, max: 2000, why: 'no stick machine gives less or more' },
      example: '125',
      obtain: 'Clamp meter, or the dial.',
    },
  },
  outputs: {
    drop: { label: 'Voltage lost in the cables', symbol: 'U_c', unit: 'V', digits: 2 },
    powerLost: { label: 'Heat made in the cables', unit: 'W', digits: 2 },
    longest: {
      label: 'Most cable, out and back, that loses no more than four volts',
      unit: 'ft',
      digits: 2,
    },
  },
  beware: [
    'Good copper and tight joints. A loose lug, a burned clamp or broken strands lose more than the whole cable: feel for warm spots with the machine off.',
    'It says nothing about how much current the cable may carry. That stands in its maker’s table, by duty cycle.',
  ],
  cite: [awgSource, metricSource, practice],
  related: ['voltage-estimate', 'booth-calibration'],
  compute({ gauge, length, current }) {
    const perMeter = ohmsPerMeter(gauge);
    const drop = perMeter * length * 0.3048 * current;
    const because: Reason[] = [rowUsed(gauge)];
    if (drop > tooMuch)
      because.push({
        kind: 'caution',
        text: `More than {${tooMuch} V} is too much: take a thicker or shorter cable, and uncoil what is coiled.`,
        cite: practice,
      });
    return {
      drop,
      powerLost: drop * current,
      longest: tooMuch / (perMeter * current) / 0.3048,
      because,
    };
  },
});

function rowUsed(gauge: Gauge): Reason {
  const { resistance, per } = cables[gauge];
  return per === 'thousand feet'
    ? {
        kind: 'row',
        text: `${gauge} copper has ${resistance} Ω in {1000 ft}, warm from work.`,
        cite: awgSource,
      }
    : {
        kind: 'row',
        text: `${gauge.replace('mm2', 'mm²')} copper has ${resistance} Ω in {1000 m} at {20 degC}; hot from work it loses about a fifth more.`,
        cite: metricSource,
      };
}
