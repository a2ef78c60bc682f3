import { defineProcedure, type Reason } from '../calculation.ts';
import { consumedLength, coreDiameter, runOut, runOutFactor } from '../inputs/run-out.ts';
import { runOutSource } from '../tables/run-out-factors.ts';
import { arcEfficiency, heatGiven } from '../welds/run-out.ts';

const practice = { source: 'common-practice', known: 'practice' } as const;

/** Bead length per length of electrode burned: it hardly depends on the electrode’s size. */
const sound = {
  'stringer bead': { from: 0.45, to: 0.8 },
  'weave or one-pass fillet': { from: 0.2, to: 0.5 },
} as const;

export default defineProcedure({
  title: 'One electrode, one bead',
  summary:
    'Rule, stub and watch after one electrode: speed, heat, and whether you moved too slowly or too fast.',
  inputs: {
    coreDiameter,
    consumedLength,
    beadLength: { ...runOut, label: 'Bead length from that electrode' },
    bead: {
      label: 'Kind of bead',
      choices: ['stringer bead', 'weave or one-pass fillet'],
      default: 'stringer bead',
      example: 'stringer bead',
      obtain: 'Stringers are padding beads and the passes of a fillet or groove laid in several.',
    },
    arcTime: {
      label: 'Arc time of that electrode',
      symbol: 't',
      unit: 's',
      limits: { min: 1, max: 600, why: 'no electrode burns shorter or longer' },
      usual: { min: 30, max: 150, why: 'a whole electrode burns {30 s} to {150 s}' },
      optional: true,
      example: '68',
      obtain: 'A partner times from strike to break with a phone or a watch.',
    },
    factor: runOutFactor,
  },
  outputs: {
    verdict: {
      label: 'Travel',
      words: ['too slow for this size', 'about right for this size', 'too fast for this size'],
    },
    runOutRatio: { label: 'Bead for each length of electrode', symbol: 'r', unit: '1', digits: 2 },
    shortest: { label: 'That much electrode should leave at least', unit: 'mm', digits: 2 },
    longest: { label: 'and at most', unit: 'mm', digits: 2 },
    travelSpeed: {
      label: 'Travel speed',
      symbol: 'v',
      unit: 'mm/min',
      digits: 2,
      optional: true,
    },
    meltRate: {
      label: 'Electrode burned each minute',
      unit: 'mm/min',
      digits: 2,
      optional: true,
    },
    heatInput: {
      label: 'Heat input (EN: with arc efficiency)',
      symbol: 'Q',
      unit: 'kJ/mm',
      digits: 2,
    },
    arcEnergy: {
      label: 'Arc energy (AWS and ASME call this heat input)',
      symbol: 'E',
      unit: 'kJ/mm',
      digits: 2,
    },
  },
  beware: [
    'The ends of the range are a shop’s guide for low-hydrogen electrodes. What the bead looks like, and the procedure, come first.',
    'The heat is from the run-out formula, whose factors are from memory.',
  ],
  cite: [practice, runOutSource],
  related: ['travel-speed', 'run-out-heat', 'voltage-estimate'],
  compute({ coreDiameter, consumedLength, beadLength, bead, arcTime, factor }) {
    const range = sound[bead];
    const runOutRatio = beadLength / consumedLength;
    const heatInput = heatGiven({ factor, coreDiameter, consumedLength }) / beadLength;
    const aMinute = (length: number) =>
      arcTime === undefined ? undefined : (60 * length) / arcTime;
    const verdict =
      runOutRatio < range.from * (1 - bits)
        ? 'too slow for this size'
        : runOutRatio > range.to * (1 + bits)
          ? 'too fast for this size'
          : 'about right for this size';
    const because: Reason[] = [
      {
        kind: 'rule',
        text: `A ${bead} is about right from ${range.from} to ${range.to} of the length burned.`,
        cite: practice,
      },
      { kind: 'rule', text: whatToChange[verdict], cite: practice },
    ];
    if (arcTime === undefined)
      because.push({ kind: 'passed', text: 'No speed: the arc was not timed.' });
    return {
      verdict,
      runOutRatio,
      shortest: range.from * consumedLength,
      longest: range.to * consumedLength,
      travelSpeed: aMinute(beadLength),
      meltRate: aMinute(consumedLength),
      heatInput,
      arcEnergy: heatInput / arcEfficiency,
      because,
    };
  },
});

/** A share of lengths that were converted: its last bits decide nothing. */
const bits = 1e-9;

const whatToChange = {
  'too slow for this size':
    'Too much metal on a short stretch: wide, heavy, slow to freeze. Move on sooner; if the pool runs ahead, take less current too.',
  'about right for this size':
    'Size of bead and size of electrode go together. Now judge the bead itself: width, toes, ripples.',
  'too fast for this size':
    'Too little metal on a long stretch: narrow, ropy, with undercut or slag at the toes. Slow down until the pool is two to three core diameters wide.',
} as const;
