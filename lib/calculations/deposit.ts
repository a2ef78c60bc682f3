import { defineFormula } from '../calculation.ts';
import { electrode } from '../inputs/electrode.ts';

export default defineFormula({
  title: 'Weld metal in a joint',
  summary: 'The mass of weld metal, from its section area and its length.',
  inputs: {
    area: {
      label: 'Section area of the weld',
      symbol: 'A',
      unit: 'in2',
      limits: { min: 0.0001, max: 100, why: 'no weld is smaller or larger' },
      example: { us: '0.125', metric: '80' },
      obtain: 'From the groove or the legs; add the cap or the bulge.',
      estimateBy: 'groove-area',
    },
    length: {
      label: 'Length of the weld',
      symbol: 'L',
      unit: 'in',
      limits: { min: 0.01, max: 100_000, why: 'no weld is shorter or longer' },
      example: { us: '7', metric: '180' },
      obtain: 'Rule along the joint.',
    },
    density: electrode.density,
  },
  outputs: {
    massPerLength: {
      label: 'Weld metal for each foot or meter',
      symbol: 'm_1',
      unit: 'lb/ft',
      digits: 3,
      formula: '12 * density * area',
    },
    mass: {
      label: 'Weld metal in the whole length',
      symbol: 'm',
      unit: 'lb',
      digits: 3,
      formula: 'density * area * length',
    },
  },
  cite: [
    { source: 'geometry', at: 'area × length × density', known: 'derived' },
    { source: 'filler-handbook', at: 'weight of weld metal per foot', known: 'read' },
  ],
  related: ['electrode-use', 'arc-time', 'groove-area'],
  compute: ({ area, length, density }) => ({
    massPerLength: 12 * density * area,
    mass: density * area * length,
  }),
});
