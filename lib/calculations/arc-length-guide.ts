import { defineProcedure, type Reason } from '../calculation.ts';
import { tradeSize } from '../tables/electrode-sizes.ts';

const practice = { source: 'common-practice', known: 'practice' } as const;
const makers = { source: 'owner-manuals', known: 'read' } as const;

/** What the second maker says, by electrode size in 32nds of an inch. */
const secondMaker: Readonly<Record<number, string>> = { 2: '1/16', 3: '1/16', 4: '1/8', 5: '1/8' };

/** Out of position the arc is held shorter; by how much, no source says. */
const outOfPosition = 0.75;

export default defineProcedure({
  title: 'Arc length',
  summary:
    'How long an arc to hold: no longer than the core wire is thick, and shorter out of position.',
  inputs: {
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
      obtain: 'How the joint lies while you weld it.',
    },
  },
  outputs: {
    longest: {
      label: 'Arc no longer than',
      symbol: 'L_max',
      unit: 'in',
      digits: 2,
      fraction: 32,
    },
    aim: { label: 'Aim for about', symbol: 'L', unit: 'in', digits: 2, fraction: 32 },
  },
  beware: [
    'You cannot measure it while it burns: listen for a steady crackle and watch the gap between core wire and pool. A long arc hisses, spatters and wanders.',
    'With a low-hydrogen electrode a long arc lets air in: pores, above all at the start.',
  ],
  cite: [makers, practice],
  related: ['source-line', 'starting-current'],
  compute({ diameter, position }) {
    const short = position === 'vertical' || position === 'overhead';
    const because: Reason[] = [
      {
        kind: 'rule',
        text: 'One maker: about the thickness of the core wire, and shorter in vertical and overhead.',
        cite: makers,
      },
      {
        kind: 'rule',
        text: 'For low-hydrogen electrodes the core’s thickness is the most, not the middle.',
        cite: { source: 'common-practice', known: 'memory' },
      },
    ];
    if (short)
      because.push({
        kind: 'rule',
        text: 'Here three quarters of the core’s thickness is the aim. No source puts a figure on “shorter”.',
        cite: practice,
      });
    const size = tradeSize(diameter);
    const other = size && secondMaker[size * 32];
    if (other)
      because.push({
        kind: 'passed',
        text: `Another maker says {${other} in} for this size${
          size === 3 / 32 || size === 5 / 32 ? '; the two disagree' : ''
        }.`,
        cite: makers,
      });
    return { longest: diameter, aim: short ? outOfPosition * diameter : diameter, because };
  },
});
