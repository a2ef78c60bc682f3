import { type Citation, defineFormula } from '../calculation.ts';
import { electrode } from '../inputs/electrode.ts';

const shopLimit: Citation = {
  source: 'common-practice',
  at: 'shop limit of many welding procedures',
  known: 'practice',
};

export default defineFormula({
  title: 'Weave width',
  summary: 'How wide a stringer and a weave may get with your electrode, as a shop limit.',
  inputs: { diameter: electrode.diameter },
  constants: {
    stringerCores: {
      value: 2,
      symbol: '2',
      unit: '1',
      name: 'core diameters across a stringer',
      cite: shopLimit,
    },
    weaveCores: {
      value: 3,
      symbol: '3',
      unit: '1',
      name: 'core diameters across a weave',
      cite: shopLimit,
    },
  },
  outputs: {
    stringerWidth: {
      label: 'Stringer, at most',
      symbol: 'w_s',
      unit: 'in',
      digits: 3,
      fraction: 32,
      formula: 'stringerCores * diameter',
    },
    weaveWidth: {
      label: 'Weave, at most',
      symbol: 'w_w',
      unit: 'in',
      digits: 3,
      fraction: 32,
      formula: 'weaveCores * diameter',
    },
  },
  beware: [
    'No code gives these two figures to everybody: the welding procedure says how wide you may weave, and it rules.',
    'It is the tip’s way from side to side. The bead comes out wider by about the core’s diameter.',
  ],
  cite: [shopLimit],
  related: ['prequalified-limits'],
  compute: ({ diameter }) => ({ stringerWidth: 2 * diameter, weaveWidth: 3 * diameter }),
});
