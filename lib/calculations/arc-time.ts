import { defineFormula } from '../calculation.ts';

export default defineFormula({
  title: 'Arc time and clock time',
  summary: 'How long the arc burns for a mass of weld metal, and how long that takes by the clock.',
  inputs: {
    mass: {
      label: 'Weld metal needed',
      symbol: 'm',
      unit: 'lb',
      limits: { min: 0.0001, max: 100_000, why: 'less cannot be weighed, more is no class' },
      example: { us: '1', metric: '0.5' },
      obtain: 'Area of the joint times its length times the density of steel.',
      estimateBy: 'deposit',
    },
    depositionRate: {
      label: 'Deposition rate while the arc burns',
      symbol: 'v_d',
      unit: 'lb/h',
      limits: { min: 0.1, max: 30, why: 'no covered electrode is slower or faster' },
      usual: {
        min: 0.8,
        max: 6,
        why: 'covered electrodes leave {0.8 lb/h} to {6 lb/h}',
        cite: { source: 'common-practice', known: 'memory' },
      },
      example: { us: '2.4', metric: '1.1' },
      obtain:
        'Weld metal from one electrode over the time it burns. A 1/8 in E7018 leaves about {2.4 lb/h} at {125 A}.',
    },
    operatingFactor: {
      label: 'Operating factor: share of the time with the arc burning',
      symbol: 'k',
      unit: '1',
      limits: {
        min: 0.01,
        max: 1,
        why: 'it is a share: write 0.2 where the arc burns a fifth of the time',
      },
      usual: {
        min: 0.05,
        max: 0.4,
        why: 'by hand the arc burns 0.05 to 0.4 of the time; the rest is chipping, brushing and fit-up',
        cite: { source: 'common-practice', known: 'memory' },
      },
      example: '0.2',
      obtain: 'Electrodes burned in an hour, times the seconds each burns, over 3600.',
    },
  },
  outputs: {
    arcHours: {
      label: 'Arc time',
      symbol: 't_a',
      unit: 'h',
      digits: 2,
      formula: 'mass / depositionRate',
    },
    clockHours: {
      label: 'Clock time',
      symbol: 't',
      unit: 'h',
      digits: 2,
      formula: 'arcHours / operatingFactor',
    },
  },
  beware: [
    'A guess for planning. Deposition rates here are from memory; time a few of your own electrodes.',
  ],
  cite: [
    { source: 'geometry', at: 'mass over rate', known: 'derived' },
    { source: 'common-practice', at: 'rates and shares', known: 'memory' },
  ],
  related: ['deposit', 'electrode-use'],
  compute({ mass, depositionRate, operatingFactor }) {
    const arcHours = mass / depositionRate;
    return { arcHours, clockHours: arcHours / operatingFactor };
  },
});
