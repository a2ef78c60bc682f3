import { defineFormula } from '../calculation.ts';
import { consumedLength, coreDiameter, runOutFactor } from '../inputs/run-out.ts';
import { runOutSource } from '../tables/run-out-factors.ts';
import { heatGiven } from '../welds/run-out.ts';

export default defineFormula({
  title: 'Run-out for a heat input',
  summary: 'How long a bead one electrode should leave to keep to a given heat input.',
  inputs: {
    coreDiameter,
    consumedLength,
    heatInput: {
      label: 'Heat input to keep (EN: with arc efficiency)',
      symbol: 'Q',
      unit: 'kJ/mm',
      limits: { min: 0.05, max: 10, why: 'no covered electrode gives less or more' },
      usual: {
        min: 0.4,
        max: 4,
        why: 'covered electrodes give {10 kJ/in} to {100 kJ/in}',
      },
      example: { us: '20', metric: '0.8' },
      obtain:
        'From the welding procedure. A limit from AWS or ASME is arc energy: multiply it by 0.8 first.',
    },
    factor: runOutFactor,
  },
  outputs: {
    runOut: {
      label: 'Run-out: bead length from that electrode',
      symbol: 'R',
      unit: 'mm',
      digits: 2,
      round: { to: '1/4 in|5 mm', way: 'nearest' },
      formula: 'factor * coreDiameter^2 * consumedLength / heatInput',
    },
  },
  beware: [
    'Under a maximum heat input the bead must be at least this long; under a minimum, at most.',
    'The formula and its factors are from memory: check them against your copy before you rely on them.',
  ],
  cite: [runOutSource],
  related: ['run-out-heat'],
  compute: ({ heatInput, ...burned }) => ({ runOut: heatGiven(burned) / heatInput }),
});
