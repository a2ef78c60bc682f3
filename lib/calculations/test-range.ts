import { defineProcedure } from '../calculation.ts';
import { weldersTest } from '../inputs/welders-test.ts';
import { NoAnswer } from '../no-answer.ts';
import { sizesD11 } from '../tables/qualified-sizes-d1.1.ts';
import { sizesIX } from '../tables/qualified-sizes-ix.ts';
import { testPositions } from '../tables/test-positions.ts';
import { specimensOf } from '../tables/test-specimens.ts';
import { fillerReasons, positionReasons, sizeReasons } from '../welds/test-reasons.ts';
import { depositsOf, fillerRow } from '../welds/tested-fillers.ts';

const reach = {
  printed: { us: 'in', metric: 'mm' },
  fraction: 32,
  words: ['unlimited', 'no minimum', 'see deposits'],
} as const;

export default defineProcedure({
  title: 'What a welder’s test qualifies',
  summary: 'Positions, thicknesses, diameters and fillers that one test covers, under two codes.',
  inputs: weldersTest,
  outputs: {
    positionsGroove: { label: 'Grooves, in these positions', text: true },
    positionsFillet: { label: 'Fillets, in these positions', text: true },
    thicknessFrom: { label: 'Thickness, from', ...reach },
    thicknessTo: { label: 'Thickness, to', ...reach },
    diameterFrom: { label: 'Outside diameter of pipe, from', ...reach },
    diameterTo: { label: 'Outside diameter of pipe, to', ...reach },
    fillers: {
      label: 'Filler by filler',
      list: {
        classification: { label: 'Electrode', text: true },
        fNumber: { label: 'Group', text: true },
        backing: { label: 'Backing', text: true },
        own: { label: 'Own reach', unit: 'in', digits: 3 },
        together: { label: 'With the others that cover it', unit: 'in', digits: 3 },
        reach: { label: 'In words', text: true },
        covers: { label: 'Also covers', text: true },
        progression: { label: 'Progression', text: true },
      },
    },
    specimens: {
      label: 'Specimens',
      list: {
        specimen: { label: 'Specimen', text: true },
        count: { label: 'Number', unit: '1' },
      },
    },
  },
  beware: [
    'A draft for the qualified person who signs. The contract’s code and edition decide, and nothing here certifies anybody.',
    'Changing the vertical progression, uphill to downhill or back, asks for a new test in both codes.',
    'A test with a backing strip never qualifies an open root.',
  ],
  cite: [
    { source: 'aws-d1.1', at: '2020 Table 6.10, positions by plate tests', known: 'read' },
    { source: 'aws-d1.1', at: '2020 Table 6.11, thickness by plate tests', known: 'memory' },
    { source: 'aws-d1.1', at: '2020 Table 10.12, positions by pipe tests', known: 'memory' },
    { source: 'aws-d1.1', at: '2020 Table 10.13, thickness and size by pipe tests', known: 'read' },
    { source: 'asme-ix', at: 'QW-452, QW-461.9, QW-433', known: 'memory' },
  ],
  related: ['bend-strain'],
  compute(given) {
    const { code, edition, test, form, thickness, outsideDiameter } = given;
    const row = testPositions[code][form][test];
    if (!row) {
      const known = Object.keys(testPositions[code][form]).join(', ');
      throw new NoAnswer(`${test} on ${form} has no row under ${code}; there are ${known}`, 'test');
    }
    if (form === 'pipe' && !outsideDiameter)
      throw new NoAnswer('Outside diameter of the pipe is missing', 'outsideDiameter');
    const isGroove = /G/.test(test);
    const deposits = depositsOf(given);
    const sizes =
      code === 'AWS D1.1'
        ? sizesD11({ form, isGroove, thickness, outsideDiameter, edition })
        : sizesIX({ form, isGroove, thickness, deposits, outsideDiameter });
    return {
      positionsGroove: row.groove,
      positionsFillet: row.fillet,
      thicknessFrom: sizes.thicknessFrom,
      thicknessTo: sizes.thicknessTo,
      diameterFrom: sizes.diameterFrom,
      diameterTo: sizes.diameterTo,
      fillers: deposits.map((one) => fillerRow(one, deposits, code)),
      specimens: specimensOf(code, test, thickness, form === 'pipe' ? outsideDiameter : undefined),
      because: [
        ...positionReasons(code, form, test, row),
        ...sizeReasons(sizes),
        ...fillerReasons(code, isGroove, deposits),
      ],
    };
  },
});
