import { defineFormula } from '../calculation.ts';
import { electrode } from '../inputs/electrode.ts';
import { NoAnswer } from '../no-answer.ts';

export default defineFormula({
  title: 'Electrodes for a mass of weld metal',
  summary: 'How many electrodes, and how much to buy, for the weld metal a joint needs.',
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
    ...electrode,
  },
  constants: {
    kilogramsPerPound: {
      value: 0.45359237,
      symbol: 'k',
      unit: '1',
      name: 'kilograms in a pound',
      cite: { source: 'geometry', at: 'definition of the pound, 1959', known: 'read' },
    },
  },
  outputs: {
    coreMass: {
      label: 'Core wire of one electrode',
      symbol: 'm_c',
      unit: 'lb',
      digits: 3,
      formula: 'density * pi / 4 * diameter^2 * electrodeLength',
    },
    electrodeMass: {
      label: 'One whole electrode, coating included',
      symbol: 'm_e',
      unit: 'lb',
      digits: 3,
      formula: 'coreMass / (1 - coatingFraction)',
    },
    electrodesPerKilogram: {
      label: 'Electrodes to the kilogram or pound',
      symbol: 'N',
      unit: '1/kg',
      digits: 3,
      formula: '1 / (kilogramsPerPound * electrodeMass)',
    },
    efficiency: {
      label: 'Electrode yield (whole electrode)',
      symbol: 'y',
      unit: '1',
      digits: 2,
      formula: 'recovery * (electrodeLength - stub) / electrodeLength',
    },
    depositPerElectrode: {
      label: 'Weld metal from one electrode',
      symbol: 'm_d',
      unit: 'lb',
      digits: 2,
      formula: 'efficiency * electrodeMass',
    },
    electrodes: {
      label: 'Electrodes, rounded up',
      symbol: 'n',
      unit: '1',
      formula: 'ceil(mass / depositPerElectrode)',
    },
    purchaseMass: {
      label: 'Mass of electrodes used up',
      symbol: 'P',
      unit: 'lb',
      digits: 2,
      formula: 'mass / efficiency',
    },
  },
  beware: [
    'No spare is in it. Learners stick electrodes and throw long stubs away: add a quarter, more on the first evenings.',
    'The yield counts the stub. A yield quoted by a laboratory does not.',
  ],
  cite: [
    { source: 'filler-handbook', at: 'electrodes = weld metal ÷ efficiency', known: 'read' },
    { source: 'common-practice', at: 'shares of coating and deposit', known: 'memory' },
  ],
  related: ['deposit', 'bead-from-electrode', 'arc-time'],
  compute({ mass, diameter, electrodeLength, stub, coatingFraction, recovery, density }) {
    if (stub >= electrodeLength)
      throw new NoAnswer('The stub is as long as the electrode: nothing was melted', 'stub');
    const coreMass = (density * Math.PI * diameter ** 2 * electrodeLength) / 4;
    const electrodeMass = coreMass / (1 - coatingFraction);
    const efficiency = (recovery * (electrodeLength - stub)) / electrodeLength;
    const depositPerElectrode = efficiency * electrodeMass;
    return {
      coreMass,
      electrodeMass,
      electrodesPerKilogram: 1 / (0.45359237 * electrodeMass),
      efficiency,
      depositPerElectrode,
      electrodes: Math.ceil(mass / depositPerElectrode),
      purchaseMass: mass / efficiency,
    };
  },
});
