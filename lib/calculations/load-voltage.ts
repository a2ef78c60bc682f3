import { defineFormula } from '../calculation.ts';

export default defineFormula({
  title: 'Conventional load voltage',
  summary: 'The voltage at which a stick machine’s rating plate states a current.',
  inputs: {
    current: {
      label: 'Welding current',
      symbol: 'I',
      unit: 'A',
      limits: { min: 1, max: 2000, why: 'no stick machine gives less or more' },
      example: '125',
      obtain: 'A current on the rating plate, row I₂.',
    },
  },
  constants: {
    base: {
      value: 20,
      symbol: 'U_0',
      unit: 'V',
      name: 'voltage where the line starts',
      cite: {
        source: 'iec-60974-1',
        at: 'manual metal arc, conventional load voltage',
        known: 'memory',
      },
    },
    slope: {
      value: 0.04,
      symbol: 'k',
      unit: 'V/A',
      name: 'rise for each ampere',
      cite: {
        source: 'iec-60974-1',
        at: 'manual metal arc, conventional load voltage',
        known: 'memory',
      },
    },
    knee: {
      value: 600,
      symbol: 'I_k',
      unit: 'A',
      name: 'current above which the line is level',
      cite: {
        source: 'iec-60974-1',
        at: 'manual metal arc, conventional load voltage',
        known: 'memory',
      },
    },
  },
  outputs: {
    voltage: {
      label: 'Load voltage on the plate',
      symbol: 'U',
      unit: 'V',
      digits: 3,
      formula: 'base + slope * min(current, knee)',
    },
  },
  beware: [
    'A convention for testing machines, measured at their terminals. It is not the voltage of your arc and reads high for a short one: never put it into a heat input.',
  ],
  cite: [
    { source: 'iec-60974-1', at: 'manual metal arc, conventional load voltage', known: 'memory' },
    { source: 'power-source-manuals', at: '2.4, one plate figure agrees', known: 'read' },
  ],
  related: ['duty-cycle', 'heat-input'],
  compute: ({ current }) => ({ voltage: 20 + 0.04 * Math.min(current, 600) }),
});
