import { defineFormula, type QuantityInput } from '../calculation.ts';
import { NoAnswer } from '../no-answer.ts';

const scale = 'Kitchen scale that shows single grams,';
const ofRods = {
  unit: 'g',
  limits: {
    min: 5,
    max: 5000,
    why: 'one electrode weighs {10 g} or more, and a small can is as much as a bench scale carries',
  },
} as const;
const ofStubs = {
  unit: 'g',
  limits: { min: 0, max: 500, why: 'those are no stubs of what was weighed before' },
} as const;
const ofPlate = {
  unit: 'g',
  limits: {
    min: 10,
    max: 10_000,
    why: 'no practice plate is lighter, and no bench scale carries more',
  },
} as const;

export default defineFormula({
  title: 'Weigh-in of a box of electrodes',
  summary:
    'How much weld metal this box gives, from a kitchen scale: ten electrodes, their stubs, and the plate.',
  inputs: {
    rods: {
      label: 'Electrodes weighed and burned',
      symbol: 'n',
      unit: '1',
      whole: true,
      limits: { min: 1, max: 200, why: 'count those on the scale' },
      usual: { min: 5, max: 50, why: 'with fewer than five, a gram on the scale is too much' },
      default: '10',
      example: '10',
      obtain: 'Count them. Ten are enough.',
    },
    rodsMass: {
      label: 'Mass of the whole electrodes',
      symbol: 'm_e',
      ...ofRods,
      example: { us: '0.714', metric: '324' },
      obtain: `${scale} all together, dry, before the first is burned.`,
    },
    stubsMass: {
      label: 'Mass of their stubs',
      symbol: 'm_s',
      ...ofStubs,
      example: { us: '0.115', metric: '52' },
      obtain: `${scale} all stubs together, cold.`,
    },
    couponBefore: {
      label: 'Plate before',
      symbol: 'm_1',
      ...ofPlate,
      example: { us: '3.4', metric: '1540' },
      obtain: `${scale} the clean dry plate.`,
    },
    couponAfter: {
      label: 'Plate after',
      symbol: 'm_2',
      ...ofPlate,
      example: { us: '3.823', metric: '1732' },
      obtain: `${scale} slag and spatter off, brushed, cold and dry. Grind nothing.`,
    },
  } satisfies Record<string, QuantityInput>,
  outputs: {
    deposit: {
      label: 'Weld metal on the plate',
      symbol: 'm_w',
      unit: 'g',
      digits: 3,
      formula: 'couponAfter - couponBefore',
    },
    depositionEfficiency: {
      label: 'Deposition efficiency (stub not counted)',
      symbol: 'r',
      unit: '1',
      digits: 2,
      formula: 'deposit / (rodsMass - stubsMass)',
    },
    electrodeYield: {
      label: 'Electrode yield (whole electrode)',
      symbol: 'y',
      unit: '1',
      digits: 2,
      formula: 'deposit / rodsMass',
    },
    depositPerRod: {
      label: 'Weld metal from each electrode',
      symbol: 'm_r',
      unit: 'g',
      digits: 2,
      formula: 'deposit / rods',
    },
  },
  beware: [
    'ISO 2401 counts recovery against the core wire alone, so a data sheet says 110 % to 130 % where this says about 0.7.',
    'It holds for this box, this current and these stubs. The plate is hot after welding: cool it before it comes near the scale.',
  ],
  cite: [
    { source: 'geometry', at: 'a balance of masses', known: 'derived' },
    { source: 'common-practice', at: 'weighing before and after', known: 'practice' },
  ],
  notes({ rods }, { deposit, depositionEfficiency }) {
    const doubt = Math.round((100 * 2) / deposit);
    return [
      {
        kind: 'rule' as const,
        text: `Two readings of a scale in whole grams leave about ${Math.max(1, doubt)} % of doubt in ${rods === 1 ? 'one electrode' : `${rods} electrodes`}.`,
      },
      ...(depositionEfficiency < 0.55 || depositionEfficiency > 0.8
        ? [
            {
              kind: 'caution' as const,
              text: 'Most boxes give 0.55 to 0.80. Look for slag left on the plate, a stub that was not weighed, or one plate mistaken for another.',
              cite: { source: 'common-practice' as const, known: 'memory' as const },
            },
          ]
        : []),
    ];
  },
  compute({ rods, rodsMass, stubsMass, couponBefore, couponAfter }) {
    const deposit = couponAfter - couponBefore;
    const melted = rodsMass - stubsMass;
    if (melted <= 0)
      throw new NoAnswer('Stubs cannot weigh as much as whole electrodes', 'stubsMass');
    if (deposit <= 0)
      throw new NoAnswer('The plate has gained nothing: weigh again', 'couponAfter');
    if (deposit > melted)
      throw new NoAnswer(
        'The plate has gained more than was melted: slag left on it, or a stub forgotten',
        'couponAfter',
      );
    return {
      deposit,
      depositionEfficiency: deposit / melted,
      electrodeYield: deposit / rodsMass,
      depositPerRod: deposit / rods,
    };
  },
});
