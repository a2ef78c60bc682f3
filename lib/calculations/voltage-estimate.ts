import { defineProcedure, type Reason } from '../calculation.ts';
import { consumedLength, coreDiameter } from '../inputs/run-out.ts';
import { NoAnswer } from '../no-answer.ts';
import { tradeSize } from '../tables/electrode-sizes.ts';
import { runOutFactorOf, runOutSource } from '../tables/run-out-factors.ts';
import { arcEfficiency, heatGiven } from '../welds/run-out.ts';

interface Found {
  way: 'run-out of a whole electrode' | 'meter' | 'guess';
  voltage: number;
  /** Either side, in volts. */
  doubt: number;
  because: Reason[];
}

export default defineProcedure({
  title: 'Arc voltage at the booth',
  summary:
    'Arc voltage from a whole electrode, from a meter, or as a guess, and how far off it may be.',
  inputs: {
    classification: {
      label: 'Electrode',
      choices: ['E7018', 'E6010', 'E6011'],
      example: 'E7018',
      obtain: 'Printed on the box and on the coating near the grip end.',
    },
    coreDiameter,
    consumedLength: { ...consumedLength, optional: true },
    arcTime: {
      label: 'Arc time of that electrode',
      symbol: 't',
      unit: 's',
      limits: { min: 2, max: 600, why: 'no electrode burns shorter or longer' },
      usual: { min: 30, max: 150, why: 'a whole electrode burns {30 s} to {150 s}' },
      optional: true,
      example: '65',
      obtain: 'A partner times from strike to break, one whole electrode without a stop.',
    },
    current: {
      label: 'Welding current',
      symbol: 'I',
      unit: 'A',
      limits: { min: 5, max: 1000, why: 'no covered electrode runs there' },
      optional: true,
      example: '125',
      obtain: 'Clamp meter for direct current round the work lead while the arc burns.',
    },
    meterVoltage: {
      label: 'Voltage on the meter while welding',
      symbol: 'U_m',
      unit: 'V',
      limits: { min: 10, max: 60, why: 'with the arc burning no meter shows less or more' },
      optional: true,
      example: '24',
      obtain: 'A partner reads the panel meter while you weld. Nobody probes a live output.',
    },
    cableDrop: {
      label: 'Voltage lost in the cables',
      symbol: 'U_c',
      unit: 'V',
      limits: { min: 0, max: 20, why: 'with more lost the arc would not hold' },
      default: '0',
      example: '1',
      obtain: 'Between the machine and the arc. Leave it at nothing if the meter sits at the arc.',
      estimateBy: 'cable-drop',
    },
  },
  outputs: {
    voltage: { label: 'Arc voltage', symbol: 'U', unit: 'V', digits: 2 },
    low: { label: 'It may be as low as', unit: 'V', digits: 2 },
    high: { label: 'It may be as high as', unit: 'V', digits: 2 },
    way: { label: 'Found by', words: ['run-out of a whole electrode', 'meter', 'guess'] },
  },
  beware: [
    'Two figures are all that any of the three ways deserves.',
    'The load voltage on the rating plate is no way to arc voltage.',
  ],
  cite: [
    runOutSource,
    { source: 'od-1651', at: 'p. 29', known: 'read' },
    { source: 'common-practice', known: 'practice' },
  ],
  related: ['heat-input', 'run-out-heat', 'rod-check'],
  compute(given) {
    const { voltage, doubt, way, because } = fromRunOut(given) ?? fromMeter(given) ?? guess(given);
    return { voltage, low: voltage - doubt, high: voltage + doubt, way, because };
  },
});

type Given = {
  classification: 'E7018' | 'E6010' | 'E6011';
  coreDiameter: number;
  consumedLength: number | undefined;
  arcTime: number | undefined;
  current: number | undefined;
  meterVoltage: number | undefined;
  cableDrop: number;
};

/** The heat that a burned length gives, over amperes and seconds; bead length drops out. */
function fromRunOut({
  classification,
  coreDiameter,
  consumedLength,
  arcTime,
  current,
  ...others
}: Given): Found | undefined {
  if (consumedLength === undefined || arcTime === undefined || current === undefined)
    return undefined;
  const factor = runOutFactorOf[classification];
  const heat = 1000 * heatGiven({ factor, coreDiameter, consumedLength });
  const voltage = heat / (arcEfficiency * current * arcTime);
  if (voltage < 14 || voltage > 45)
    throw new NoAnswer(
      `Length, time and current together give {${Math.round(voltage)} V}, and no covered electrode burns there: check the watch, the rule, the current and the electrode`,
    );
  const doubt = voltage * Math.hypot(0.05, 0.08, 1 / arcTime, 3 / consumedLength);
  const because: Reason[] = [
    {
      kind: 'rule',
      text: 'By the length burned, the time and the current. The first choice: it needs no voltmeter.',
      cite: runOutSource,
    },
    {
      kind: 'rule',
      text: 'In doubt: the current by 5 %, the factor by 8 %, the time by {1 s}, the length by {1/8 in}.',
      cite: { source: 'common-practice', known: 'practice' },
    },
  ];
  if (consumedLength < 200)
    because.push({
      kind: 'caution',
      text: 'That is less than a whole electrode: start and crater weigh too much in it.',
    });
  if (others.meterVoltage !== undefined)
    because.push({
      kind: 'passed',
      text: `Not used: the meter, which with the cables taken off says {${(others.meterVoltage - others.cableDrop).toPrecision(2)} V}.`,
    });
  return { way: 'run-out of a whole electrode', voltage, doubt, because };
}

function fromMeter({ meterVoltage, cableDrop }: Given): Found | undefined {
  if (meterVoltage === undefined) return undefined;
  if (meterVoltage - cableDrop < 10)
    throw new NoAnswer('With so much lost in the cables no arc is left', 'cableDrop');
  return {
    way: 'meter',
    voltage: meterVoltage - cableDrop,
    doubt: 1,
    because: [
      {
        kind: 'rule',
        text: 'The meter’s reading less what the cables lose. A needle that dances leaves about {1 V} of doubt.',
        cite: { source: 'common-practice', known: 'practice' },
      },
      {
        kind: 'passed',
        text: 'Not used: run-out of a whole electrode, which needs the length burned, the time and the current.',
      },
    ],
  };
}

function guess({ classification, coreDiameter }: Given): Found {
  if (classification !== 'E7018')
    throw new NoAnswer(
      'A guess is only worth printing for E7018. Time a whole electrode, or have a partner read the meter',
      'classification',
    );
  const size = tradeSize(coreDiameter / 25.4) ?? coreDiameter / 25.4;
  const eighth = size === 1 / 8;
  // 20 V for 3/32 in and 30 V for 3/8 in, with a straight line between.
  const byArmy = 20 + (10 * (size - 3 / 32)) / (3 / 8 - 3 / 32);
  return {
    way: 'guess',
    voltage: eighth ? 22 : byArmy,
    doubt: eighth ? 2 : 3,
    because: [
      eighth
        ? {
            kind: 'rule',
            text: 'A guess: a {1/8 in} E7018 held short burns at about {22 V}, and a hand’s habit makes it {2 V} more or less.',
            cite: { source: 'common-practice', known: 'practice' },
          }
        : {
            kind: 'rule',
            text: 'A guess: heavily coated electrodes burn at {20 V} for {3/32 in} and {30 V} for {3/8 in}; a straight line between.',
            cite: { source: 'od-1651', at: 'p. 29', known: 'read' },
          },
      {
        kind: 'caution',
        text: 'Say so wherever you use it. Better: time a whole electrode, or have a partner read the meter.',
      },
    ],
  };
}
