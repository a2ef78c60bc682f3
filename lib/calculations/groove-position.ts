import { defineProcedure } from '../calculation.ts';
import { weldAngles } from '../inputs/weld-angles.ts';
import { positionNames, positionRows } from '../tables/weld-positions.ts';
import { positionRow, rowHolds, rowText } from '../welds/weld-position.ts';

export default defineProcedure({
  title: 'Position of a weld',
  summary:
    'Flat, horizontal, vertical or overhead, from how the weld rises and where its face looks.',
  inputs: {
    ...weldAngles,
    weld: {
      label: 'Weld',
      choices: ['groove', 'fillet'],
      example: 'groove',
      obtain: 'From the welding symbol. The two have different limits.',
    },
  },
  outputs: { position: { label: 'Position', words: positionNames } },
  beware: [
    'These are positions of production welds. A test piece is held closer to its position than the limits here.',
    'The figures print no rule for an angle exactly on a limit. Here flat goes before horizontal, both before vertical, vertical before overhead; an axis at {80 deg} is vertical.',
  ],
  cite: [
    { source: 'aws-d1.1', at: '2020 Figs. 6.1 and 6.2', known: 'memory' },
    {
      source: 'aws-d3.6',
      at: 'Fig. 5.1: areas D and E, and how the angles are measured',
      known: 'read',
    },
    { source: 'iso-6947', at: 'the same limits as slope and rotation', known: 'memory' },
  ],
  related: ['pipe-position', 'plate-for-clock'],
  compute({ axisInclination, faceRotation, weld }) {
    const row = positionRow(weld, axisInclination, faceRotation);
    const shared = positionRows[weld].filter(
      (other) => other !== row && rowHolds(other, axisInclination, faceRotation),
    );
    return {
      position: row.position,
      because: [
        { kind: 'row', text: rowText(row), cite: row.cite },
        ...shared.map(
          (other) =>
            ({ kind: 'passed', text: `On a shared limit. Not used: ${rowText(other)}` }) as const,
        ),
      ],
    };
  },
});
