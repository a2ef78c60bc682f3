import { defineFormula } from '../calculation.ts';
import { beadPerElectrode } from '../inputs/bead-per-electrode.ts';
import { electrode } from '../inputs/electrode.ts';
import { NoAnswer } from '../no-answer.ts';
import { depositedVolume } from '../welds/electrode-deposit.ts';

/**
 * The weld metal that one electrode leaves, spread evenly along what it lays. Core wire and weld
 * metal are the same steel, so the density moves the mass and not the area.
 */
export default defineFormula({
  title: 'Bead from an electrode',
  summary: 'How large a bead one electrode leaves when it runs out over a given length.',
  inputs: { ...electrode, runOut: beadPerElectrode },
  outputs: {
    depositPerElectrode: {
      label: 'Weld metal from one electrode',
      symbol: 'm_d',
      unit: 'lb',
      digits: 2,
      formula:
        'recovery * density * pi / 4 * diameter^2 * (electrodeLength - stub) / (1 - coatingFraction)',
    },
    area: {
      label: 'Section area of the bead',
      symbol: 'A',
      unit: 'in2',
      digits: 2,
      formula: 'depositPerElectrode / (density * runOut)',
    },
    filletLeg: {
      label: 'Leg of a flat fillet with that area',
      symbol: 'z',
      unit: 'in',
      digits: 2,
      round: { to: '1/32 in|0.5 mm', way: 'nearest' },
      formula: 'sqrt(2 * area)',
    },
  },
  beware: [
    'The shares are those of a shop’s usual E7018. Weigh your own electrodes before you order by them.',
    'ISO 2401 counts recovery against the core wire alone and gets 110 % to 130 % for E7018. The share asked for here is weld metal by everything melted, coating included.',
  ],
  cite: [
    { source: 'geometry', at: 'metal laid over length laid', known: 'derived' },
    { source: 'common-practice', at: 'shares of coating and deposit', known: 'memory' },
  ],
  related: ['padding-plan', 'leg-from-rod', 'run-out-for-leg', 'electrode-use'],
  compute(given) {
    if (given.stub >= given.electrodeLength)
      throw new NoAnswer('The stub is as long as the electrode: nothing was melted', 'stub');
    const volume = depositedVolume(given);
    const area = volume / given.runOut;
    return { depositPerElectrode: given.density * volume, area, filletLeg: Math.sqrt(2 * area) };
  },
});
