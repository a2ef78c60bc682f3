import { defineProcedure, type QuantityInput, type Reason } from '../calculation.ts';
import { arcVoltage, travelSpeed, weldingCurrent } from '../inputs/arc.ts';
import { type InsideVerdict, insideRange, insideVerdicts } from '../inspection/inside-range.ts';

const temperature = {
  label: 'Temperature of the joint before this pass',
  symbol: 'T',
  unit: 'degF',
  limits: { min: -40, max: 1200, why: 'no joint is welded there' },
  example: { us: '180', metric: '80' },
  obtain:
    'Temperature stick or contact probe beside the joint, just before the arc; not in the groove.',
} as const satisfies QuantityInput;

const fromProcedure = 'From the procedure’s sheet. Leave it out where the sheet has none.';

export default defineProcedure({
  title: 'Inside the procedure?',
  summary:
    'One set of readings beside the ranges of the welding procedure, with a plain yes or no.',
  inputs: {
    current: { ...weldingCurrent, optional: true },
    currentFrom: end(weldingCurrent, 'Lowest current', { us: '115', metric: '115' }),
    currentTo: end(weldingCurrent, 'Highest current', { us: '140', metric: '140' }),
    voltage: { ...arcVoltage, optional: true },
    voltageFrom: end(arcVoltage, 'Lowest voltage', { us: '20', metric: '20' }),
    voltageTo: end(arcVoltage, 'Highest voltage', { us: '25', metric: '25' }),
    travelSpeed: { ...travelSpeed, optional: true },
    travelSpeedFrom: end(travelSpeed, 'Lowest travel speed', { us: '5', metric: '125' }),
    travelSpeedTo: end(travelSpeed, 'Highest travel speed', { us: '8', metric: '200' }),
    interpass: { ...temperature, optional: true },
    interpassFrom: end(temperature, 'Lowest preheat and interpass temperature', {
      us: '50',
      metric: '10',
    }),
    interpassTo: end(temperature, 'Highest interpass temperature', { us: '250', metric: '120' }),
    arcEnergyTo: {
      label: 'Highest heat input (arc energy, without efficiency)',
      symbol: 'E_max',
      unit: 'kJ/in',
      limits: { min: 1, max: 500, why: 'no covered electrode gives less or more' },
      optional: true,
      example: { us: '55', metric: '2.2' },
      obtain: fromProcedure,
    },
  },
  outputs: {
    verdict: {
      label: 'Inside the procedure',
      words: ['yes, as far as it was checked', 'no', 'nothing was checked'],
    },
    currentInside: { label: 'Current', words: insideVerdicts },
    voltageInside: { label: 'Voltage', words: insideVerdicts },
    travelSpeedInside: { label: 'Travel speed', words: insideVerdicts },
    interpassInside: { label: 'Temperature', words: insideVerdicts },
    arcEnergyInside: { label: 'Heat input', words: insideVerdicts },
    arcEnergy: {
      label: 'Arc energy (AWS and ASME call this heat input)',
      symbol: 'E',
      unit: 'kJ/in',
      digits: 2,
      optional: true,
    },
  },
  beware: [
    'It checks numbers only. Electrode, position, progression, cleaning and joint stand in the procedure too.',
    'A yes holds for this pass. The inspector and the procedure rule, and a reading outside is told before the next pass, not after.',
  ],
  cite: [{ source: 'common-practice', at: 'reading against the sheet', known: 'practice' }],
  related: ['heat-input', 'travel-speed', 'travel-speed-limits'],
  compute(given) {
    const arcEnergy = energyOf(given);
    const inside = {
      currentInside: insideRange(given.current, given.currentFrom, given.currentTo, 'currentTo'),
      voltageInside: insideRange(given.voltage, given.voltageFrom, given.voltageTo, 'voltageTo'),
      travelSpeedInside: insideRange(
        given.travelSpeed,
        given.travelSpeedFrom,
        given.travelSpeedTo,
        'travelSpeedTo',
      ),
      interpassInside: insideRange(
        given.interpass,
        given.interpassFrom,
        given.interpassTo,
        'interpassTo',
      ),
      arcEnergyInside: insideRange(arcEnergy, undefined, given.arcEnergyTo, 'arcEnergyTo'),
    };
    return {
      verdict: overall(Object.values(inside)),
      ...inside,
      arcEnergy,
      because: reasons(inside),
    };
  },
});

/** One end of a range of the procedure, asked for like the reading itself but never cautioned. */
function end<const E extends { us: string; metric: string }>(
  input: QuantityInput,
  label: string,
  example: E,
) {
  const { symbol, unit, limits } = input;
  return { label, symbol, unit, limits, optional: true, example, obtain: fromProcedure } as const;
}

function overall(answers: readonly InsideVerdict[]) {
  if (answers.every((one) => one === 'not checked')) return 'nothing was checked';
  return answers.some((one) => one.startsWith('no,')) ? 'no' : 'yes, as far as it was checked';
}

function energyOf(given: {
  voltage: number | undefined;
  current: number | undefined;
  travelSpeed: number | undefined;
}): number | undefined {
  const { voltage, current, travelSpeed } = given;
  if (voltage === undefined || current === undefined || travelSpeed === undefined) return undefined;
  return (60 * voltage * current) / (1000 * travelSpeed);
}

type Item =
  | 'currentInside'
  | 'voltageInside'
  | 'travelSpeedInside'
  | 'interpassInside'
  | 'arcEnergyInside';

/** What to do about a reading outside, by what was read. */
const advice: Readonly<Record<Item, Partial<Record<InsideVerdict, string>>>> = {
  currentInside: {
    'no, too low': 'Turn the current up, then read again while the arc burns.',
    'no, too high': 'Turn the current down, then read again while the arc burns.',
  },
  voltageInside: {
    'no, too low':
      'A low voltage with a covered electrode is an arc held very short, or a meter far from the arc.',
    'no, too high': 'A high voltage with a covered electrode is a long arc: hold it closer.',
  },
  travelSpeedInside: {
    'no, too low': 'Travel faster, or the bead and its heat grow.',
    'no, too high': 'Travel slower, or the bead stays thin and cold.',
  },
  interpassInside: {
    'no, too low': 'Warm the joint before the next pass.',
    'no, too high': 'Wait. Let it cool in still air, with no water and no fan.',
  },
  arcEnergyInside: {
    'no, too high': 'Too much heat for each inch: travel faster, or take less current.',
  },
};

function reasons(inside: Readonly<Record<Item, InsideVerdict>>): Reason[] {
  const found: Reason[] = [
    {
      kind: 'rule',
      text: 'A reading on either end of its range is inside. Checked is what has both a reading and an end of its range.',
    },
  ];
  for (const [name, verdict] of Object.entries(inside) as [Item, InsideVerdict][]) {
    const text = advice[name][verdict];
    if (text !== undefined)
      found.push({
        kind: 'caution',
        text,
        cite: { source: 'common-practice', known: 'practice' },
      });
  }
  return found;
}
