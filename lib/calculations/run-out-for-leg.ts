import { defineFormula } from '../calculation.ts';
import { electrode } from '../inputs/electrode.ts';
import { filletBuild, filletLeg } from '../inputs/fillet-build.ts';
import { NoAnswer } from '../no-answer.ts';
import { depositedVolume } from '../welds/electrode-deposit.ts';

const { diameter, electrodeLength, stub, coatingFraction, recovery } = electrode;

export default defineFormula({
  title: 'Run-out for a leg',
  summary: 'How far each electrode should run out so that the fillet comes to its size.',
  inputs: {
    leg: filletLeg,
    ...filletBuild,
    diameter,
    electrodeLength,
    stub,
    coatingFraction,
    recovery,
  },
  outputs: {
    area: {
      label: 'Section area of the fillet, bulge included',
      symbol: 'A',
      unit: 'in2',
      digits: 3,
      formula: '(1 + bulgeShare / 100) * leg^2 / 2',
    },
    runOut: {
      label: 'Run-out: bead length from each electrode',
      symbol: 'R',
      unit: 'in',
      digits: 2,
      formula:
        'passes * recovery * pi / 4 * diameter^2 * (electrodeLength - stub) / ((1 - coatingFraction) * area)',
    },
  },
  beware: [
    'Run out farther and the fillet is undersize; shorter and it is oversize, hotter and slower to pay for itself.',
  ],
  cite: [
    { source: 'geometry', at: 'metal laid over length laid', known: 'derived' },
    { source: 'common-practice', at: 'shares of coating, deposit and bulge', known: 'practice' },
  ],
  related: ['leg-from-rod', 'bead-from-electrode', 'fillet-passes'],
  notes(_, { runOut }) {
    if (runOut < 3)
      return [
        {
          kind: 'caution',
          text: 'One electrode would hardly leave a thumb’s width of weld. Use more passes or a larger electrode.',
        },
      ];
    if (runOut > 16)
      return [
        {
          kind: 'caution',
          text: 'No hand stretches an electrode that far. Use fewer passes or a smaller electrode.',
        },
      ];
    return [];
  },
  compute({ leg, passes, bulgeShare, ...burned }) {
    if (burned.stub >= burned.electrodeLength)
      throw new NoAnswer('The stub is as long as the electrode: nothing was melted', 'stub');
    const area = ((1 + bulgeShare / 100) * leg ** 2) / 2;
    return { area, runOut: (passes * depositedVolume(burned)) / area };
  },
});
