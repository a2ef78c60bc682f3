import { defineProcedure, type Reason } from '../calculation.ts';
import { pieceOf, rodsOfRow } from '../class/coupon-row.ts';
import { boughtMass, metalOf } from '../class/metal.ts';
import { canPounds, rodsOf } from '../class/rods.ts';
import { hoursOf, type Turn } from '../class/turns.ts';
import { barStock } from '../inputs/bar-stock.ts';
import { couponRows } from '../inputs/coupon-rows.ts';
import { NoAnswer } from '../no-answer.ts';
import { lengthText } from '../text/length-text.ts';

export default defineProcedure({
  title: 'Materials for a class',
  summary: 'Bars, pipe, electrodes and booth hours for some exercises and everybody who does them.',
  inputs: {
    exercises: couponRows,
    learners: {
      label: 'Learners',
      symbol: 'n',
      unit: '1',
      whole: true,
      limits: { min: 1, max: 1000, why: 'a class has at least one learner' },
      example: '16',
      obtain: 'Count those who do all of these exercises.',
    },
    attempts: {
      label: 'Times each exercise is done, repeats included',
      symbol: 'A',
      unit: '1',
      limits: { min: 0.1, max: 20, why: 'on average over the class' },
      usual: { min: 1, max: 2, why: 'between no repeat at all and every coupon made twice' },
      example: '1.5',
      default: '1',
      obtain: '1 without repeats; 1.5 where every second coupon is made again.',
    },
    spare: {
      label: 'Spare electrodes',
      symbol: 's',
      unit: 'percent',
      limits: { min: 0, max: 200, why: 'more than that is another order' },
      example: '25',
      default: '25 percent',
      obtain: 'Beginners waste up to 40 %, later 15 %.',
    },
    ...barStock,
  },
  outputs: {
    bars: {
      label: 'Metal by section',
      list: {
        section: { label: 'Section', text: true },
        pieces: { label: 'Pieces', unit: '1' },
        bars: { label: 'Bars to buy', unit: '1' },
        mass: { label: 'Weight bought', unit: 'lb', digits: 4 },
        lowerBound: { label: 'No plan needs fewer', unit: '1' },
      },
    },
    electrodes: {
      label: 'Electrodes by kind',
      list: {
        kind: { label: 'Electrode', text: true },
        pieces: { label: 'To buy, spare included', unit: '1' },
        mass: { label: 'Weight', unit: 'lb' },
        cans: { label: 'Ten-pound cans', unit: '1' },
      },
    },
    steelMass: { label: 'Steel bought', symbol: 'M', unit: 'lb', digits: 4 },
    electrodeMass: { label: 'Electrodes bought', symbol: 'E', unit: 'lb' },
    hoursEach: { label: 'Booth hours of one learner', symbol: 'h', unit: 'h' },
    boothHours: { label: 'Booth hours of the class', symbol: 'H', unit: 'h', digits: 4 },
  },
  beware: [
    'Each section is cut for itself, longest pieces first; the cutting plan shows bar by bar.',
    'Weights are of nominal sizes and of electrodes {14 in} long; the supplier’s label rules.',
    'A plan on paper leaves nothing for a machine that is down or a learner who is away.',
  ],
  cite: [
    { source: 'common-practice', at: 'spare by stage, cans of ten pounds', known: 'practice' },
    { source: 'geometry', at: 'lengths, volumes and minutes add up', known: 'derived' },
    { source: 'asme-b36.10', at: 'sizes of pipe', known: 'read' },
  ],
  related: ['cut-plan', 'oven-load', 'electrode-use'],
  compute({ exercises, learners, attempts, spare, barLength, pipeLength, kerf, trim }) {
    if (exercises.length === 0) throw new NoAnswer('Give at least one exercise', 'exercises');
    const turns = exercises.map((row, at): Turn => {
      const name = `exercises.${at + 1}`;
      return {
        learners,
        attempts: row.attempts * attempts,
        repeats: 0,
        minutes: row.minutes,
        exercise: {
          slug: name,
          title: name,
          lesson: 1,
          stage: 'middle',
          station: 'booth',
          minutes: row.minutes,
          attempts: row.attempts,
          work: 'other',
          coupon: row.piece === 'none' || row.pieces === 0 ? [] : [pieceOf(row, name)],
          rods: row.electrodes === 0 ? [] : [rodsOfRow(row, name)],
        },
      };
    });
    const metal = metalOf(turns, {
      bothSides: false,
      ringLoss: 0,
      ringLeast: 0,
      facing: 0,
      spare: 0,
      bar: { length: barLength, kerf, trim },
      pipe: { length: pipeLength, kerf, trim },
    });
    for (const { section, long } of metal)
      if (long !== undefined)
        throw new NoAnswer(
          `A piece of ${lengthText(long)} is longer than a trimmed bar of ${section}`,
          'exercises',
        );
    const share = spare / 100;
    const rods = rodsOf(turns, { early: share, middle: share, late: share });
    const boothHours = turns.reduce((sum, turn) => sum + hoursOf(turn), 0);
    return {
      bars: metal.map((it) => ({
        section: it.section,
        pieces: it.pieces.reduce((sum, { count }) => sum + count, 0),
        bars: it.plan?.bars,
        mass: boughtMass(it),
        lowerBound: it.plan?.lowerBound,
      })),
      electrodes: rods.map(({ kind, pieces, pounds, cans }) => ({
        kind,
        pieces,
        mass: pounds,
        cans,
      })),
      steelMass: metal.reduce((sum, it) => sum + boughtMass(it), 0),
      electrodeMass: rods.reduce((sum, { pounds }) => sum + pounds, 0),
      hoursEach: boothHours / learners,
      boothHours,
      because,
    };
  },
});

const because: Reason[] = [
  {
    kind: 'rule',
    text: 'Coupons and electrodes: each exercise times its attempts times the learners, rounded up to whole attempts of the class; then the spare, rounded up to whole electrodes.',
  },
  {
    kind: 'rule',
    text: `A can holds {${canPounds} lb}. Core and plate are steel of {0.2836 lb/in3}; the coating is 0.30 of an E7018 and 0.12 of an E6010.`,
    cite: { source: 'common-practice', at: 'coating by weight', known: 'memory' },
  },
];
