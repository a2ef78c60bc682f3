import { defineProcedure } from '../calculation.ts';
import { planBars, tooLong } from '../cutting/bar-plan.ts';
import { NoAnswer } from '../no-answer.ts';
import { lengthText } from '../text/length-text.ts';

const mostPieces = 10_000;

export default defineProcedure({
  title: 'Cutting plan for bars',
  summary: 'Which pieces to cut from which bar, how many bars to buy, and what is left over.',
  inputs: {
    pieces: {
      label: 'Pieces to cut',
      list: {
        length: {
          label: 'Length',
          symbol: 'l',
          unit: 'in',
          limits: { min: 0.25, max: 1200, why: 'a saw holds no shorter piece' },
          example: { us: '8 in', metric: '200 mm' },
          obtain: 'Drawing of the coupon, with the allowance for its bevel.',
        },
        count: {
          label: 'How many',
          symbol: 'n',
          unit: '1',
          whole: true,
          limits: { min: 1, max: 1000, why: 'a plan is for one order' },
          example: '16',
          obtain: 'Pieces in a coupon times learners times attempts.',
        },
      },
      example: [
        { length: '8 in', count: '32' },
        { length: '6 in', count: '16' },
      ],
      obtain: 'The list of coupons for this stretch of the course; one section at a time.',
    },
    stockLength: {
      label: 'Length of a bar',
      symbol: 'L',
      unit: 'in',
      limits: { min: 1, max: 1200, why: 'no yard sells a longer bar' },
      example: { us: '240 in', metric: '6000 mm' },
      obtain: 'The supplier’s list, or a tape along the bar.',
    },
    kerf: {
      label: 'Width of the cut (kerf)',
      symbol: 'k',
      unit: 'in',
      limits: { min: 0, max: 1, why: 'no shop saw cuts wider' },
      example: { us: '1/16 in', metric: '1.6 mm' },
      obtain: 'About {1/16 in} for a band saw, {1/8 in} for an abrasive wheel or plasma.',
    },
    trim: {
      label: 'Trimmed off each bar, its cut included',
      symbol: 't',
      unit: 'in',
      limits: { min: 0, max: 24, why: 'more than that is a piece of its own' },
      example: { us: '1/2 in', metric: '12 mm' },
      default: '0 in',
      obtain: 'What has to go because the end of the bar is bent, sheared or painted.',
    },
  },
  outputs: {
    bars: { label: 'Bars to buy', unit: '1' },
    plan: {
      label: 'Bar by bar',
      list: {
        bar: { label: 'Bar', unit: '1' },
        pieces: { label: 'Pieces', text: true },
        used: { label: 'In pieces', unit: 'in' },
        waste: { label: 'Cuts, trim and rest', unit: 'in' },
      },
    },
    waste: { label: 'Not in pieces', symbol: 'W', unit: 'percent', digits: 2 },
    lowerBound: { label: 'No plan needs fewer bars than', unit: '1' },
    proven: { label: 'Proven the fewest', yes: true },
    cuts: { label: 'Bars with their cuts', shape: true },
  },
  beware: [
    'One section at a time: bars of different sections are different plans.',
    'Mark and measure each piece after the cut before; marking the whole bar at once loses the kerfs.',
  ],
  cite: [
    { source: 'common-practice', at: 'kerf and trim', known: 'practice' },
    { source: 'geometry', at: 'lengths along a bar add up', known: 'derived' },
    { source: 'martello-toth-1990', at: 'lower bound L2', known: 'memory' },
    { source: 'gupta-ho-1999', at: 'minimum bin slack', known: 'memory' },
  ],
  compute({ pieces, stockLength, kerf, trim }) {
    const total = pieces.reduce((sum, { count }) => sum + count, 0);
    if (total === 0) throw new NoAnswer('Give at least one piece to cut', 'pieces');
    if (total > mostPieces)
      throw new NoAnswer(`A plan holds up to ${mostPieces} pieces; split the order`, 'pieces');
    const stock = { length: stockLength, kerf, trim };
    const long = tooLong(
      pieces.map(({ length }) => length),
      stock,
    );
    if (long !== undefined)
      throw new NoAnswer(
        `A piece of ${lengthText(long)} is longer than a trimmed bar; buy longer bars`,
        'pieces',
      );
    const plan = planBars(pieces, stock);
    const rows = plan.patterns
      .flatMap((pattern) => Array<typeof pattern>(pattern.bars).fill(pattern))
      .map(({ pieces: cut, used }, at) => ({
        bar: at + 1,
        pieces: cut.map(({ length, count }) => `${count} × ${lengthText(length)}`).join(', '),
        used,
        waste: Math.max(0, stockLength - used),
      }));
    const bought = rows.length * stockLength;
    return {
      bars: rows.length,
      plan: rows,
      waste: (100 * rows.reduce((sum, row) => sum + row.waste, 0)) / bought,
      lowerBound: plan.lowerBound,
      proven: rows.length === plan.lowerBound,
      cuts: plan.patterns,
      because: [
        {
          kind: 'rule',
          text: 'The longest pieces first; then each bar as full as it gets; then a search for a plan with fewer bars, which stops after a set number of steps. The plan with the fewest bars stands.',
        },
        {
          kind: 'rule',
          text: 'The fewest that any plan needs: all pieces over the length of a bar, or more where long pieces cannot share one.',
          cite: { source: 'martello-toth-1990', at: 'lower bound L2', known: 'memory' },
        },
      ],
    };
  },
});
