import { defineFormula } from '../calculation.ts';
import { consumedLength, coreDiameter, runOut, runOutFactor } from '../inputs/run-out.ts';
import { runOutSource } from '../tables/run-out-factors.ts';
import { arcEfficiency, heatGiven } from '../welds/run-out.ts';

export default defineFormula({
  title: 'Heat input from run-out',
  summary: 'Heat input with a rule alone: how far did one electrode go? No meters, no watch.',
  inputs: { coreDiameter, consumedLength, runOut, factor: runOutFactor },
  constants: {
    arcEfficiency: {
      value: arcEfficiency,
      symbol: 'η',
      unit: '1',
      name: 'arc (thermal) efficiency of shielded metal arc welding',
      cite: { source: 'iso-tr-17671-1', at: 'thermal efficiency factor', known: 'read' },
    },
  },
  outputs: {
    heatInput: {
      label: 'Heat input (EN: with arc efficiency)',
      symbol: 'Q',
      unit: 'kJ/mm',
      digits: 2,
      formula: 'factor * coreDiameter^2 * consumedLength / runOut',
    },
    arcEnergy: {
      label: 'The same as arc energy (AWS and ASME call this heat input)',
      symbol: 'E',
      unit: 'kJ/mm',
      digits: 2,
      formula: 'heatInput / arcEfficiency',
    },
  },
  beware: [
    'The formula and its factors are from memory: check them against your copy before you rely on them.',
    'Current, voltage and speed are not in it. A longer run-out is less heat, whatever the dial says.',
    'On a small pipe or coupon the metal is warmer from pass to pass, and no formula here knows it: measure the temperature between passes.',
    'For a compliance record use what the procedure asks for, most often volts, amperes and travel speed.',
  ],
  cite: [
    runOutSource,
    {
      source: 'navsea-248',
      at: 'para 4-4.1.13.2 c: bead length per length of electrode as the control of heat input',
      known: 'read',
    },
  ],
  related: ['run-out-length', 'heat-input'],
  compute({ runOut, ...burned }) {
    const heatInput = heatGiven(burned) / runOut;
    return { heatInput, arcEnergy: heatInput / arcEfficiency };
  },
});
