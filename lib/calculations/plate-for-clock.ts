import { defineProcedure } from '../calculation.ts';
import { weldAtClock } from '../geometry/fixed-pipe.ts';
import { fixedPipe } from '../inputs/fixed-pipe.ts';
import { positionNames } from '../tables/weld-positions.ts';
import { clockFace } from '../text/clock-text.ts';
import { positionRow, rowText } from '../welds/weld-position.ts';

const plateTests = { flat: '1G', horizontal: '2G', vertical: '3G', overhead: '4G' } as const;

export default defineProcedure({
  title: 'A practice plate for a point of the clock',
  summary: 'How to clamp a plate so that its weld lies like the weld at one point of a fixed pipe.',
  inputs: fixedPipe,
  outputs: {
    axisInclination: { label: 'Raise one end of the joint by', symbol: 'I', unit: 'deg' },
    faceTilt: { label: 'First roll the plate about its joint by', symbol: 'ψ', unit: 'deg' },
    faceRotation: {
      label: 'Rotation of the face, as the position figures count it',
      symbol: 'R',
      unit: 'deg',
    },
    position: { label: 'Position', words: positionNames },
    nearestTest: {
      label: 'Plate test in the same position',
      words: ['1G', '2G', '3G', '4G'],
    },
    setUp: { label: 'How to clamp it', text: true },
  },
  beware: [
    'A plate trains the angle and the posture of one point. On the pipe the angle changes while you weld.',
    'Clamp overhead and tilted plates so that they cannot drop or swing when they are struck.',
  ],
  cite: [
    {
      source: 'geometry',
      at: 'a plate turned like the tangent plane of the pipe',
      known: 'derived',
    },
    { source: 'aws-d1.1', at: '2020 Fig. 6.1', known: 'memory' },
  ],
  related: ['clock-for-plate', 'pipe-position', 'groove-position'],
  compute({ pipeInclination, clockAngle }) {
    const { axisInclination, faceTilt, faceRotation } = weldAtClock(pipeInclination, clockAngle);
    const row = positionRow('groove', axisInclination, faceRotation);
    const roll = Math.round(faceTilt);
    const rise = Math.round(axisInclination);
    const rolled = [
      roll === 0 ? 'leave the face up' : '',
      roll === 180 ? 'turn it over, face down' : '',
    ].find((text) => text !== '');
    return {
      axisInclination,
      faceTilt,
      faceRotation,
      position: row.position,
      nearestTest: plateTests[row.position],
      setUp: `Lay the plate flat, groove up and joint level. ${
        rolled ? `Roll: ${rolled}.` : `Roll it ${roll}° about the joint (90° stands it on edge).`
      } ${rise === 0 ? 'Keep the joint level.' : `Then raise one end of the joint by ${rise}°.`}`,
      because: [
        {
          text: `It stands for ${clockFace(clockAngle)}, and for ${clockFace(360 - clockAngle)} as in a mirror.`,
          cite: { source: 'geometry', at: 'both halves of the joint are alike', known: 'derived' },
        },
        { kind: 'row', text: rowText(row), cite: row.cite },
      ],
    };
  },
});
