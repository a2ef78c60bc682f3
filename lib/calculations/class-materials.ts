import { defineProcedure, type Reason } from '../calculation.ts';
import { boughtMass, metalOf } from '../class/metal.ts';
import { rodMass } from '../class/rod-mass.ts';
import { canPounds, rodsOf } from '../class/rods.ts';
import { atBooth, hoursOf, type Turn } from '../class/turns.ts';
import { orderedPipe } from '../inputs/pipe.ts';
import { NoAnswer } from '../no-answer.ts';
import { classifications } from '../tables/classifications.ts';
import { lengthText } from '../text/length-text.ts';
import { pipeSize, poundsPerFoot } from '../welds/pipe-size.ts';

const steel = 0.2836;
const kinds = ['flat bar', 'plate', 'backing bar', 'pipe', 'none'] as const;

export default defineProcedure({
  title: 'Materials for a class',
  summary: 'Bars, pipe, electrodes and booth hours for some exercises and everybody who does them.',
  inputs: {
    exercises: {
      label: 'Exercises, a row for each kind of piece',
      list: {
        piece: {
          label: 'What is cut',
          choices: kinds,
          example: 'flat bar',
          default: 'none',
          obtain: 'The exercise says so; none where an exercise needs a second row for electrodes.',
        },
        thickness: {
          label: 'Thickness',
          symbol: 't',
          unit: 'in',
          limits: { min: 0.03, max: 12, why: 'no coupon is thinner or thicker' },
          example: { us: '3/8', metric: '10' },
          optional: true,
          obtain: 'First figure of the section; not for pipe.',
        },
        width: {
          label: 'Width',
          symbol: 'w',
          unit: 'in',
          limits: { min: 0.1, max: 60, why: 'no bar is narrower or wider' },
          example: { us: '4', metric: '100' },
          optional: true,
          obtain: 'Second figure of the section; not for pipe.',
        },
        nps: { ...orderedPipe.nps, optional: true },
        schedule: { ...orderedPipe.schedule, optional: true },
        length: {
          label: 'Length',
          symbol: 'l',
          unit: 'in',
          limits: { min: 0.25, max: 1200, why: 'a saw holds no shorter piece' },
          example: { us: '8', metric: '200' },
          optional: true,
          obtain: 'Length of one piece, with what facing and beveling take.',
        },
        pieces: {
          label: 'Pieces in a coupon',
          symbol: 'p',
          unit: '1',
          whole: true,
          limits: { min: 0, max: 1000, why: 'a coupon is made of a few pieces' },
          example: '1',
          default: '0',
          obtain: 'Two for a tee or a groove.',
        },
        classification: {
          label: 'Electrode',
          choices: classifications,
          example: 'E7018',
          optional: true,
          obtain: 'Printed on the electrode and on the box.',
        },
        diameter: {
          label: 'Electrode diameter',
          symbol: 'd',
          unit: 'in',
          limits: { min: 0.04, max: 0.3125, why: 'covered electrodes go up to {5/16 in}' },
          example: { us: '1/8', metric: '3.2' },
          optional: true,
          obtain: 'Printed on the box; the wire without its coating.',
        },
        electrodes: {
          label: 'Electrodes for an attempt',
          symbol: 'e',
          unit: '1',
          whole: true,
          limits: { min: 0, max: 10_000, why: 'more than that is no booth exercise' },
          example: '16',
          default: '0',
          obtain: 'The exercise says so, or a calculator for its pad, groove or pipe.',
        },
        minutes: {
          label: 'Minutes at the booth for an attempt',
          symbol: 'm',
          unit: 'min',
          limits: { min: 0, max: 6000, why: 'longer than that is a project' },
          example: '90',
          default: '0 min',
          obtain: 'Write it on one row of the exercise only.',
        },
        attempts: {
          label: 'Attempts',
          symbol: 'a',
          unit: '1',
          limits: { min: 0, max: 100, why: 'nobody does one exercise oftener' },
          example: '2',
          default: '1',
          obtain: 'How often each learner does it, before repeats.',
        },
      },
      example: [
        {
          piece: 'flat bar',
          thickness: '3/8 in',
          width: '4 in',
          length: '8 in',
          pieces: '1',
          classification: 'E7018',
          diameter: '1/8 in',
          electrodes: '16',
          minutes: '90',
          attempts: '2',
        },
        {
          piece: 'flat bar',
          thickness: '3/8 in',
          width: '3 in',
          length: '8 in',
          pieces: '2',
          classification: 'E7018',
          diameter: '1/8 in',
          electrodes: '8',
          minutes: '75',
          attempts: '3',
        },
      ],
      obtain: 'The exercises of this stretch of the course, from their pages.',
    },
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
    barLength: {
      label: 'Length of a bar',
      symbol: 'L',
      unit: 'in',
      limits: { min: 1, max: 1200, why: 'no yard sells a longer bar' },
      example: { us: '240', metric: '6000' },
      default: '240 in',
      obtain: 'The supplier’s list.',
    },
    pipeLength: {
      label: 'Length of a pipe',
      symbol: 'P',
      unit: 'in',
      limits: { min: 1, max: 1200, why: 'no yard sells a longer pipe' },
      example: { us: '252', metric: '6000' },
      default: '252 in',
      obtain: 'The supplier’s list; {21 ft} is a usual single length.',
    },
    kerf: {
      label: 'Width of the cut (kerf)',
      symbol: 'k',
      unit: 'in',
      limits: { min: 0, max: 1, why: 'no shop saw cuts wider' },
      example: { us: '1/16', metric: '1.6' },
      default: '1/16 in',
      obtain: 'About {1/16 in} for a band saw, {1/8 in} for an abrasive wheel or plasma.',
    },
    trim: {
      label: 'Trimmed off each bar, its cut included',
      symbol: 't',
      unit: 'in',
      limits: { min: 0, max: 24, why: 'more than that is a piece of its own' },
      example: { us: '1/2', metric: '12' },
      default: '0 in',
      obtain: 'What has to go because the end of the bar is bent, sheared or painted.',
    },
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
          lesson: at + 1,
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
    const long = metal.find((it) => it.long !== undefined);
    if (long?.long !== undefined)
      throw new NoAnswer(
        `A piece of ${lengthText(long.long)} is longer than a trimmed bar of ${long.section}`,
        'exercises',
      );
    const share = spare / 100;
    const rods = rodsOf(turns, { early: share, middle: share, late: share });
    const boothHours = turns.filter(atBooth).reduce((sum, turn) => sum + hoursOf(turn), 0);
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

interface Row {
  piece: (typeof kinds)[number];
  thickness?: number | undefined;
  width?: number | undefined;
  nps?: keyof typeof import('../tables/pipe-b36.10.ts').pipeRows | undefined;
  schedule?: import('../tables/pipe-b36.10.ts').Schedule | undefined;
  length?: number | undefined;
  pieces: number;
  classification?: string | undefined;
  diameter?: number | undefined;
  electrodes: number;
}

function given<T>(value: T | undefined, what: string, field: string): T {
  if (value === undefined) throw new NoAnswer(`${what} is missing`, field);
  return value;
}

function pieceOf(row: Row, at: string) {
  const length = given(row.length, 'Length of the piece', `${at}.length`);
  const count = row.pieces;
  if (row.piece === 'pipe') {
    const nps = given(row.nps, 'Nominal pipe size', `${at}.nps`);
    const schedule = given(row.schedule, 'Schedule', `${at}.schedule`);
    const { outside, wall } = pipeSize(nps, schedule);
    const perInch = poundsPerFoot(outside.us, wall.us) / 12;
    return {
      section: `pipe NPS ${nps} Sch ${schedule}`,
      pipe: true,
      perInch,
      length,
      count,
    } as const;
  }
  const thickness = given(row.thickness, 'Thickness', `${at}.thickness`);
  const width = given(row.width, 'Width', `${at}.width`);
  const section = `${row.piece} ${lengthText(thickness)} × ${lengthText(width)}`;
  return { section, perInch: thickness * width * steel, length, count };
}

function rodsOfRow(row: Row, at: string) {
  const classification = given(row.classification, 'Electrode', `${at}.classification`);
  const diameter = given(row.diameter, 'Electrode diameter', `${at}.diameter`);
  const kind = `${classification} ${lengthText(diameter)}`;
  return { kind, each: rodMass(classification, diameter), count: row.electrodes };
}
