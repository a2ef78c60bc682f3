import { defineFormula } from '../calculation.ts';
import { electrode } from '../inputs/electrode.ts';
import { filletBuild, filletLeg } from '../inputs/fillet-build.ts';

export default defineFormula({
  title: 'Weld metal in a fillet',
  summary: 'How much weld metal each foot or meter of a fillet takes, and the electrodes for it.',
  inputs: {
    leg: filletLeg,
    bulgeShare: filletBuild.bulgeShare,
    density: electrode.density,
    electrodeYield: {
      label: 'Electrode yield (whole electrode)',
      symbol: 'y',
      unit: '1',
      limits: { min: 0.2, max: 1, why: 'no electrode leaves more than it weighs' },
      usual: {
        min: 0.5,
        max: 0.7,
        why: 'with its stub an electrode leaves 0.5 to 0.7 of its mass',
      },
      example: '0.6',
      default: '0.6',
      obtain:
        'Weigh ten whole electrodes, burn them, weigh what the plate gained. Handbooks give 0.55 to 0.66.',
      estimateBy: 'electrode-use',
    },
  },
  outputs: {
    area: {
      label: 'Section area',
      symbol: 'A',
      unit: 'in2',
      digits: 3,
      formula: '(1 + bulgeShare / 100) * leg^2 / 2',
    },
    massPerLength: {
      label: 'Weld metal for each foot or meter',
      symbol: 'm_1',
      unit: 'lb/ft',
      digits: 3,
      formula: '12 * density * area',
    },
    electrodeMassPerLength: {
      label: 'Electrodes used up for each foot or meter',
      symbol: 'P_1',
      unit: 'lb/ft',
      digits: 3,
      formula: 'massPerLength / electrodeYield',
    },
  },
  beware: [
    'Twice the leg is four times the metal. A fillet that is a sixteenth too large on 1/4 in costs half as much again.',
  ],
  cite: [
    { source: 'filler-handbook', at: 'weight of weld metal per foot of fillet', known: 'read' },
    { source: 'filler-table', at: 'fillet rows', known: 'read' },
  ],
  related: ['deposit', 'electrode-use', 'run-out-for-leg'],
  compute({ leg, bulgeShare, density, electrodeYield }) {
    const area = ((1 + bulgeShare / 100) * leg ** 2) / 2;
    const massPerLength = 12 * density * area;
    return { area, massPerLength, electrodeMassPerLength: massPerLength / electrodeYield };
  },
});
