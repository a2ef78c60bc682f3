/** What is asked about a welder's test: the code, the coupon, and what was laid in it with which filler. */
import type { Inputs } from '../calculation.ts';
import { classifications } from '../tables/classifications.ts';
import { editions } from '../tables/qualified-sizes-d1.1.ts';
import { tests } from '../tables/test-positions.ts';
import type { Backing } from '../welds/filler-cover.ts';

const backings = ['with backing', 'without backing'] as const satisfies readonly Backing[];
const progressions = ['uphill', 'downhill', 'none'] as const;

const classification = {
  label: 'Electrode',
  choices: classifications,
  example: 'E7018',
  obtain: 'Printed on the electrode that the welder used.',
} as const;
const backing = {
  label: 'Backing',
  choices: backings,
  example: 'with backing',
  obtain:
    'A strip, or weld metal already there, is backing. An open root is without. Fill over an open root is with backing.',
} as const;
const progression = {
  label: 'Progression in the vertical',
  choices: progressions,
  example: 'uphill',
  obtain: 'Which way the weld ran where the joint stood upright; none where it never did.',
} as const;
const layers = {
  label: 'Layers',
  symbol: 'n',
  unit: '1',
  whole: true,
  limits: { min: 1, max: 200, why: 'a weld has at least one layer' },
  example: '3',
  obtain: 'Counted while welding.',
} as const;
const printedSize = { printed: { us: 'in', metric: 'mm' } } as const;

export const weldersTest = {
  code: {
    label: 'Code',
    choices: ['AWS D1.1', 'ASME IX'],
    example: 'AWS D1.1',
    obtain: 'The contract names it, with its edition.',
  },
  edition: {
    label: 'Edition of AWS D1.1',
    choices: editions,
    example: '2010 or later',
    default: '2010 or later',
    obtain:
      'The contract names it. Editions to the early 2000s name their test pipes. ASME IX does not ask this.',
  },
  test: {
    label: 'Test',
    choices: tests,
    example: '3G+4G',
    obtain: 'How the coupon was fixed: G for groove, F for fillet, 1 flat to 6 inclined.',
  },
  form: {
    label: 'Welded on',
    choices: ['plate', 'pipe'],
    example: 'plate',
    obtain: 'What the coupon was made of.',
  },
  thickness: {
    label: 'Thickness of the coupon',
    symbol: 'T',
    ...printedSize,
    limits: { min: 0.05, max: 10, why: 'no test coupon is thinner or thicker' },
    example: { us: '3/8', metric: '10' },
    obtain: 'Caliper on the plate, or the wall of the pipe.',
  },
  outsideDiameter: {
    label: 'Outside diameter of the pipe',
    symbol: 'D',
    ...printedSize,
    limits: { min: 0.2, max: 100, why: 'no test pipe is smaller or larger' },
    example: '',
    optional: true,
    obtain:
      'For pipe only: caliper or tape across the outside; the nominal size does not measure it.',
  },
  classification: { ...classification, default: 'E7018' },
  backing: { ...backing, default: 'with backing' },
  layers: { ...layers, optional: true },
  progression: { ...progression, default: 'uphill' },
  deposits: {
    label: 'Deposits, where more than one filler was used',
    list: {
      classification,
      thickness: {
        label: 'Deposit thickness',
        symbol: 't',
        ...printedSize,
        limits: { min: 0.02, max: 10, why: 'a deposit is thicker than nothing' },
        example: { us: '1/8', metric: '3' },
        obtain: 'Measured in the groove after that filler, cover not counted.',
      },
      layers: { ...layers, optional: true },
      backing,
      progression: { ...progression, optional: true },
    },
    optional: true,
    example: [
      {
        classification: 'E7018',
        thickness: '3/8 in',
        layers: '3',
        backing: 'with backing',
        progression: 'uphill',
      },
    ],
    obtain: 'One row for each filler, root first. Left empty, one filler made the whole coupon.',
  },
} as const satisfies Inputs;
