import { defineProcedure, type Reason } from '../calculation.ts';
import { printedOnElectrode } from '../inputs/classification.ts';
import { NoAnswer } from '../no-answer.ts';
import {
  citePositions,
  citeStrengths,
  fNumbers,
  readDigits,
  weldMetals,
} from '../tables/electrodes-a5.1.ts';

export default defineProcedure({
  title: 'What the digits on an electrode say',
  summary:
    'Strength, positions, covering, current and qualification group, read from a classification.',
  inputs: printedOnElectrode,
  outputs: {
    tensileStrength: {
      label: 'Tensile strength of the weld metal, at least',
      printed: { us: 'ksi', metric: 'MPa' },
    },
    positions: { label: 'Positions', text: true },
    covering: { label: 'Covering', text: true },
    current: { label: 'Current', text: true },
    lowHydrogen: { label: 'Low-hydrogen covering', yes: true },
    hydrogenLimit: {
      label: 'Hydrogen in the deposited metal, at most',
      unit: 'ml/100g',
      optional: true,
    },
    fNumber: { label: 'F-number, the group in which a welder is qualified', words: fNumbers },
  },
  beware: [
    'For carbon steel electrodes of AWS A5.1. Low-alloy electrodes of AWS A5.5 carry more letters and other rules.',
    'The box label gives the maker’s currents and storage; it rules over any table.',
  ],
  cite: [
    { source: 'aws-a5.1', at: 'classification and designators', known: 'read' },
    { source: 'filler-handbook', at: 'p. 2, table of the last digits', known: 'read' },
    { source: 'aws-d1.1', at: '2020 Table 6.13, F-numbers', known: 'memory' },
  ],
  related: ['electrode-exposure', 'starting-current'],
  compute({ classification, designator }) {
    const digits = readDigits(classification);
    const { covering, current, lowHydrogen, fNumber, cite } = digits.covering;
    const figure = /\d+/.exec(designator)?.[0];
    const hydrogen = figure === undefined ? undefined : Number(figure);
    if (designator !== 'none' && !lowHydrogen)
      throw new NoAnswer(
        `${classification} has no low-hydrogen covering, so no ${designator} can follow it; look at the print again`,
        'designator',
      );
    const because: Reason[] = [
      {
        text: `E: an electrode. ${classification.slice(1, 3)}: weld metal of at least {${digits.strength.us} ksi|${digits.strength.metric} MPa} tensile strength.`,
        cite: citeStrengths,
      },
      {
        text: `${digits.positionDigit}: ${digits.position}.`,
        cite: citePositions,
      },
      {
        text: `${classification.slice(3, 5)}, read together: ${covering}; ${current}.`,
        cite,
      },
    ];
    const metal = weldMetals[classification];
    if (metal) because.push(metal);
    if (hydrogen !== undefined)
      because.push({
        text: `H${hydrogen}: at most {${hydrogen} ml/100g} of hydrogen in the deposited metal, as made and kept dry.`,
        cite: { source: 'aws-a5.1', at: 'optional designators', known: 'read' },
      });
    if (designator.endsWith('R'))
      because.push({
        text: 'R: the covering passed a test of nine hours in warm, damp air, {80 degF} at 80 % humidity.',
        cite: { source: 'aws-a5.1', at: 'optional designators', known: 'read' },
      });
    because.push({
      text: `${fNumber}: coverings that ask the same of the hand. A test with a higher group covers the lower ones in AWS D1.1; ASME IX looks at the backing as well.`,
      cite: { source: 'aws-d1.1', at: '2020 Table 6.13; ASME IX QW-432, QW-433', known: 'memory' },
    });
    if (digits.positionDigit === '1')
      because.push({
        kind: 'caution',
        text: lowHydrogen
          ? 'Vertical and overhead, only up to {5/32 in|4 mm} core wire; uphill, not downhill.'
          : 'Vertical and overhead, only up to {3/16 in|5 mm} core wire.',
        cite: { source: 'aws-a5.1', at: 'Table 1, footnote on positions', known: 'memory' },
      });
    return {
      tensileStrength: digits.strength,
      positions: digits.position,
      covering,
      current,
      lowHydrogen,
      hydrogenLimit: hydrogen,
      fNumber,
      because,
    };
  },
});
