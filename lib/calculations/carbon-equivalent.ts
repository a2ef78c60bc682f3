import { defineFormula, type QuantityInput } from '../calculation.ts';
import { outsideRanges } from '../tables/carbon-equivalent-ranges.ts';

/** One element of the mill test report, in percent of mass. Left out, it counts as none. */
const element = (
  label: string,
  symbol: string,
  max: number,
  example: string,
  left?: '0',
): QuantityInput => ({
  label,
  symbol,
  unit: 'percent',
  limits: { min: 0, max, why: 'these indices are for weldable structural and pressure steels' },
  example,
  ...(left && { default: left }),
  obtain:
    left === undefined
      ? 'Mill test report of the heat; without one, the highest figure that the steel’s specification allows.'
      : 'Mill test report of the heat. Left out, it counts as 0, which makes the answer too low if the steel holds some.',
});

export default defineFormula({
  title: 'Carbon equivalents',
  summary: 'How easily a steel hardens beside the weld, from its chemistry, by five indices.',
  inputs: {
    carbon: element('Carbon', 'C', 1, '0.17'),
    manganese: element('Manganese', 'Mn', 3, '0.85', '0'),
    silicon: element('Silicon', 'Si', 2, '0.22', '0'),
    copper: element('Copper', 'Cu', 2, '0.25', '0'),
    nickel: element('Nickel', 'Ni', 10, '0.10', '0'),
    chromium: element('Chromium', 'Cr', 10, '0.10', '0'),
    molybdenum: element('Molybdenum', 'Mo', 2, '0.02', '0'),
    vanadium: element('Vanadium', 'V', 1, '0.002', '0'),
    niobium: element('Niobium', 'Nb', 0.5, '0', '0'),
    boron: element('Boron', 'B', 0.05, '0', '0'),
  },
  outputs: {
    ceIIW: {
      label: 'CE of the International Institute of Welding',
      symbol: 'CE_IIW',
      unit: 'percent',
      digits: 2,
      formula:
        'carbon + manganese / 6 + (chromium + molybdenum + vanadium) / 5 + (nickel + copper) / 15',
    },
    ceAWS: {
      label: 'CE of AWS D1.1, with silicon',
      symbol: 'CE_AWS',
      unit: 'percent',
      digits: 2,
      formula:
        'carbon + (manganese + silicon) / 6 + (chromium + molybdenum + vanadium) / 5 + (nickel + copper) / 15',
    },
    pcm: {
      label: 'Pcm, for low-carbon steels',
      symbol: 'P_cm',
      unit: 'percent',
      digits: 2,
      formula:
        'carbon + silicon / 30 + (manganese + copper + chromium) / 20 + nickel / 60 + molybdenum / 15 + vanadium / 10 + 5 * boron',
    },
    cet: {
      label: 'CET, for the preheat of EN 1011-2 method B',
      symbol: 'CET',
      unit: 'percent',
      digits: 3,
      formula: 'carbon + (manganese + molybdenum) / 10 + (chromium + copper) / 20 + nickel / 40',
    },
    carbonFactor: {
      label: 'Weight that CEN gives the alloys at this carbon',
      symbol: 'a',
      unit: '1',
      digits: 3,
      formula: '0.75 + 0.25 * tanh(20 * (carbon - 0.12))',
    },
    cen: {
      label: 'CEN, for low and medium carbon alike',
      symbol: 'CEN',
      unit: 'percent',
      digits: 2,
      formula:
        'carbon + carbonFactor * (silicon / 24 + manganese / 6 + copper / 15 + nickel / 20 + (chromium + molybdenum + niobium + vanadium) / 5 + 5 * boron)',
    },
  },
  empirical: true,
  beware: [
    'Never compare one index with another’s limit: for the same plate they differ by a tenth of a percent and more.',
    'For nickel in CEN the sources disagree: a twentieth, as here, or a fifteenth. At 0.4 % nickel that changes the answer by less than 0.01.',
  ],
  cite: [
    { source: 'carbon-equivalent-guide', at: 'the indices in words', known: 'read' },
    { source: 'en-1011-2', at: 'C.2 (CE), C.3 (CET)', known: 'memory' },
    { source: 'aws-d1.1', at: 'annex on preheat, CE and Pcm', known: 'memory' },
  ],
  related: ['preheat-minimum', 'preheat-cet'],
  notes: (steel, { ceIIW }) => outsideRanges(steel, ceIIW),
  compute({
    carbon: C,
    manganese: Mn,
    silicon: Si,
    copper: Cu,
    nickel: Ni,
    chromium: Cr,
    molybdenum: Mo,
    vanadium: V,
    niobium: Nb,
    boron: B,
  }) {
    const ceIIW = C + Mn / 6 + (Cr + Mo + V) / 5 + (Ni + Cu) / 15;
    const carbonFactor = 0.75 + 0.25 * Math.tanh(20 * (C - 0.12));
    return {
      ceIIW,
      ceAWS: ceIIW + Si / 6,
      pcm: C + Si / 30 + (Mn + Cu + Cr) / 20 + Ni / 60 + Mo / 15 + V / 10 + 5 * B,
      cet: C + (Mn + Mo) / 10 + (Cr + Cu) / 20 + Ni / 40,
      carbonFactor,
      cen:
        C + carbonFactor * (Si / 24 + Mn / 6 + Cu / 15 + Ni / 20 + (Cr + Mo + Nb + V) / 5 + 5 * B),
    };
  },
});
