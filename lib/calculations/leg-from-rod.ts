import { defineFormula } from '../calculation.ts';
import { beadPerElectrode } from '../inputs/bead-per-electrode.ts';
import { electrode } from '../inputs/electrode.ts';
import { filletBuild } from '../inputs/fillet-build.ts';
import { NoAnswer } from '../no-answer.ts';
import { depositedVolume } from '../welds/electrode-deposit.ts';

const { diameter, electrodeLength, stub, coatingFraction, recovery } = electrode;

export default defineFormula({
  title: 'Leg from a rod',
  summary: 'What fillet your electrode makes at the run-out you just measured.',
  inputs: {
    diameter,
    runOut: beadPerElectrode,
    ...filletBuild,
    electrodeLength,
    stub,
    coatingFraction,
    recovery,
  },
  outputs: {
    passArea: {
      label: 'Section area of one pass',
      symbol: 'a',
      unit: 'in2',
      digits: 2,
      formula:
        'recovery * pi / 4 * diameter^2 * (electrodeLength - stub) / ((1 - coatingFraction) * runOut)',
    },
    leg: {
      label: 'Leg of the fillet',
      symbol: 'z',
      unit: 'in',
      digits: 2,
      round: { to: '1/32 in|0.5 mm', way: 'nearest' },
      formula: 'sqrt(2 * passes * passArea / (1 + bulgeShare / 100))',
    },
  },
  beware: [
    'Both legs are taken alike. Metal that sags onto one plate makes that leg longer and the other shorter: the gauge decides.',
  ],
  cite: [
    { source: 'geometry', at: 'metal laid over length laid', known: 'derived' },
    { source: 'common-practice', at: 'shares of coating, deposit and bulge', known: 'practice' },
  ],
  related: ['run-out-for-leg', 'bead-from-electrode', 'fillet-passes'],
  compute({ runOut, passes, bulgeShare, ...burned }) {
    if (burned.stub >= burned.electrodeLength)
      throw new NoAnswer('The stub is as long as the electrode: nothing was melted', 'stub');
    const passArea = depositedVolume(burned) / runOut;
    return { passArea, leg: Math.sqrt((2 * passes * passArea) / (1 + bulgeShare / 100)) };
  },
});
