import { defineProcedure, type Reason } from '../calculation.ts';
import { NoAnswer } from '../no-answer.ts';
import { tradeSize } from '../tables/electrode-sizes.ts';
import {
  type CurrentRow,
  fillAndFillet,
  openRoot,
  type Rated,
  ratedAs,
  rowFromTypical,
  shopRows,
  typical,
} from '../tables/starting-currents.ts';
import type { Position } from '../tables/weld-positions.ts';

export default defineProcedure({
  title: 'Starting current',
  summary: 'A range of current to start from, and the figure to set first.',
  inputs: {
    classification: {
      label: 'Electrode',
      choices: ['E7018', 'E6010', 'E6011', 'E6013', 'E7014', 'E7016', 'E7018-1', 'E7018M'],
      example: 'E7018',
      obtain: 'Printed on the box and on the coating near the grip end.',
    },
    diameter: {
      label: 'Electrode diameter (core wire)',
      symbol: 'd',
      unit: 'in',
      limits: {
        min: 0.03,
        max: 0.4,
        why: 'covered electrodes are made from {1/16 in} to {3/8 in}',
      },
      example: { us: '1/8', metric: '3.2' },
      obtain: 'Printed on the box; it is the wire without its coating.',
    },
    position: {
      label: 'Position',
      choices: ['flat', 'horizontal', 'vertical', 'overhead'],
      example: 'flat',
      obtain: 'How the joint lies while you weld it. Vertical is meant uphill.',
    },
    use: {
      label: 'Used for',
      choices: ['fill and fillet', 'open root'],
      default: 'fill and fillet',
      example: 'fill and fillet',
      obtain: 'Open root is the first pass into a gap with nothing behind it.',
    },
  },
  outputs: {
    suggested: { label: 'Set first', symbol: 'I', unit: 'A', digits: 3 },
    low: { label: 'Lowest to try', unit: 'A', digits: 3 },
    high: { label: 'Highest to try', unit: 'A', digits: 3 },
  },
  beware: [
    'The label on the box and the welding procedure rule. These are rows of a shop, to start from.',
    'Dials lie by several amperes: know your machine’s offset.',
  ],
  cite: [shopRows, typical.cite],
  related: ['filter-shade'],
  compute({ classification, diameter, position, use }) {
    const electrode = ratedAs[classification];
    const size = tradeSize(diameter);
    if (size === undefined)
      throw new NoAnswer(
        'That is no electrode size; boxes say {3/32 in|2.5 mm}, {1/8 in|3.2 mm}, {5/32 in|4 mm}',
        'diameter',
      );
    const parts = size * 32;
    const usual = typical[electrode][parts];
    const own =
      use === 'open root' ? rootRow(electrode, parts) : fillRow(electrode, parts, position);
    const found =
      own ?? (use === 'open root' ? undefined : usual && rowFromTypical(usual, position));
    if (!found)
      throw new NoAnswer(
        'This course has no row for it: take the range on the box, and begin low in it',
        'diameter',
      );
    const because: Reason[] = [];
    if (own)
      because.push({
        kind: 'row',
        text: `${classification}, ${use}, ${rowName(use, position)}: set {${found.suggested} A} on electrode positive, then move between {${found.low} A} and {${found.high} A} by what the pool does.`,
        cite: shopRows,
      });
    else
      because.push({
        kind: 'row',
        text: `This course has no row of its own for ${classification} in this size and position. AWS A5.1 calls {${found.low} A} to {${found.high} A} typical for it, whatever the position: begin at {${found.suggested} A}, low in the range, and read the box.`,
        cite: typical.cite,
      });
    if (own && usual)
      because.push({
        kind: 'passed',
        text: `AWS A5.1 calls {${usual.low} A} to {${usual.high} A} typical for this size. Sound settings out of position and in an open root can lie below it.`,
        cite: typical.cite,
      });
    if (electrode === 'E7018')
      because.push({
        kind: 'passed',
        text: `The old rule, one ampere for each thousandth of an inch, gives {${Math.round(size * 1000)} A}.`,
        cite: { source: 'owner-manuals', known: 'read' },
      });
    return { ...found, because };
  },
});

function rootRow(electrode: Rated, parts: number): CurrentRow | undefined {
  if (electrode !== 'E6010')
    throw new NoAnswer(
      'An open root is run here with E6010 or E6011; E7018 follows on top of it, or runs on a backing bar',
      'use',
    );
  return openRoot[parts];
}

function fillRow(electrode: Rated, parts: number, position: Position): CurrentRow | undefined {
  if (
    isSmallUpright(electrode) &&
    parts > 5 &&
    (position === 'vertical' || position === 'overhead')
  )
    throw new NoAnswer(
      'Low-hydrogen and EXX14 electrodes over {5/32 in|4 mm} are outside the prequalified limit in this position',
      'diameter',
    );
  return fillAndFillet[electrode][parts]?.[position === 'horizontal' ? 'flat' : position];
}

/** Low-hydrogen and EXX14: the code's table lets no more than 5/32 in climb or weld overhead. */
const isSmallUpright = (electrode: Rated): boolean =>
  electrode === 'E7018' || electrode === 'E7014' || electrode === 'E7016';

const rowName = (use: string, position: Position): string => {
  if (use === 'open root') return 'uphill in any position';
  if (position === 'vertical') return 'vertical uphill';
  return position === 'overhead' ? 'overhead' : 'flat and horizontal';
};
