import { defineProcedure, type Reason } from '../calculation.ts';
import { NoAnswer } from '../no-answer.ts';

const amperes = {
  unit: 'A',
  limits: { min: 5, max: 2000, why: 'no stick machine gives less or more' },
} as const;
const practice = { source: 'common-practice', known: 'practice' } as const;

export default defineProcedure({
  title: 'Dial against clamp meter',
  summary: 'How far off a booth’s dial is, and where to set it for the current you want.',
  inputs: {
    readings: {
      label: 'Readings',
      list: {
        dial: {
          ...amperes,
          label: 'Dial',
          symbol: 'I_d',
          example: '125',
          obtain: 'What the dial or the display says.',
        },
        meter: {
          ...amperes,
          label: 'Clamp meter',
          symbol: 'I_m',
          example: '118',
          obtain: 'While the arc burns, about ten seconds after the strike.',
        },
      },
      example: [
        { dial: '90', meter: '86' },
        { dial: '125', meter: '118' },
        { dial: '160', meter: '151' },
      ],
      obtain:
        'Clamp meter made for direct current, closed round the work lead, while a partner welds a flat bead. Three settings that the course uses.',
    },
    wanted: {
      ...amperes,
      label: 'Current you want',
      symbol: 'I',
      optional: true,
      example: '125',
      obtain: 'From the procedure or the starting range.',
      estimateBy: 'starting-current',
    },
  },
  outputs: {
    offset: {
      label: 'Add to the dial to know the current (mean offset)',
      unit: 'A',
      digits: 2,
      signed: true,
    },
    spread: { label: 'Offsets differ among themselves by', unit: 'A', digits: 2 },
    setDial: { label: 'Set the dial to', symbol: 'I_d', unit: 'A', digits: 3, optional: true },
  },
  beware: [
    'Stay clear of the output: the clamp goes round an insulated lead, and nobody opens a machine. Repair and calibration for record are for a qualified person.',
    'An ordinary clamp meter reads alternating current only and shows nothing here.',
    'Repeat it when a machine, a cable or a clamp is changed, and write the date on the booth’s sheet.',
  ],
  cite: [practice],
  related: ['starting-current', 'cable-drop'],
  compute({ readings, wanted }) {
    if (readings.length === 0) throw new NoAnswer('List at least one reading', 'readings');
    const pairs = readings.map(({ dial, meter }) => ({ dial, meter, offset: meter - dial }));
    const offsets = pairs.map(({ offset }) => offset);
    const offset = offsets.reduce((sum, one) => sum + one, 0) / offsets.length;
    const spread = Math.max(...offsets) - Math.min(...offsets);
    const because: Reason[] = [
      {
        kind: 'rule',
        text: `The mean of ${offsets.length === 1 ? 'one reading' : `${offsets.length} readings`}, meter less dial.`,
        cite: practice,
      },
    ];
    if (spread > 10)
      because.push({
        kind: 'caution',
        text: 'The offset changes along the dial by more than {10 A}: go by the nearest reading, not by the mean.',
        cite: practice,
      });
    if (Math.abs(offset) > 15)
      because.push({
        kind: 'caution',
        text: 'More than {15 A} off: check the work clamp, the cable joints and the meter’s zero, then have the machine looked at.',
        cite: practice,
      });
    if (wanted === undefined) return { offset, spread, setDial: undefined, because };
    const nearest = pairs.reduce((best, pair) =>
      Math.abs(pair.meter - wanted) < Math.abs(best.meter - wanted) ? pair : best,
    );
    const setDial = wanted - nearest.offset;
    if (setDial <= 0)
      throw new NoAnswer('The offset is larger than the current you want', 'wanted');
    because.push({
      kind: 'row',
      text: `For {${wanted} A} the nearest reading is used: dial {${nearest.dial} A}, meter {${nearest.meter} A}.`,
    });
    return { offset, spread, setDial, because };
  },
});
