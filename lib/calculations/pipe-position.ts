import { defineProcedure } from '../calculation.ts';
import { weldAtClock } from '../geometry/fixed-pipe.ts';
import { fixedPipe } from '../inputs/fixed-pipe.ts';
import { positionNames } from '../tables/weld-positions.ts';
import { clockFace } from '../text/clock-text.ts';
import { positionRow, rowText } from '../welds/weld-position.ts';

export default defineProcedure({
  title: 'Position on a fixed pipe',
  summary: 'How the weld lies at one point of the clock, and what position that is.',
  inputs: fixedPipe,
  outputs: {
    position: { label: 'Position', words: positionNames },
    clock: { label: 'On the clock', text: true },
    axisInclination: { label: 'Inclination of the weld’s axis', symbol: 'I', unit: 'deg' },
    faceRotation: {
      label: 'Rotation of the face, 180 as far up as it can look',
      symbol: 'R',
      unit: 'deg',
      optional: true,
    },
  },
  beware: [
    'These are positions of production welds. What a test covers goes by the test’s name: a pipe fixed at {45 deg}, five degrees up or down, is a 6G test whatever position each point has.',
    'The limits are angles on a drawing. The change that you feel comes gradually.',
  ],
  cite: [
    {
      source: 'geometry',
      at: 'tangent and normal of a circle on an inclined pipe',
      known: 'derived',
    },
    { source: 'aws-d1.1', at: '2020 Fig. 6.1', known: 'memory' },
    { source: 'aws-d3.6', at: 'Fig. 5.1, how the two angles are measured', known: 'read' },
  ],
  related: ['pipe-position-shares', 'plate-for-clock', 'groove-position'],
  compute({ pipeInclination, clockAngle }) {
    const { axisInclination, faceTilt, faceRotation } = weldAtClock(pipeInclination, clockAngle);
    const row = positionRow('groove', axisInclination, faceRotation);
    const plumb = axisInclination > 90 - 1e-6;
    const tilt = Math.round(faceTilt);
    return {
      position: row.position,
      clock: clockFace(clockAngle),
      axisInclination,
      faceRotation: plumb ? undefined : faceRotation,
      because: [
        {
          text: plumb
            ? 'Here the weld runs straight up, so it does not matter which way the face looks.'
            : `Here the weld rises at {${Math.round(axisInclination)} deg}, and its face is turned {${tilt} deg} away from up.`,
          cite: { source: 'geometry', at: 'I = asin(|sin θ|·cos α)', known: 'derived' },
        },
        { kind: 'row', text: rowText(row), cite: row.cite },
        ...(row.position === 'vertical' && !plumb && faceTilt < 45
          ? [
              {
                kind: 'caution',
                text: 'The face still looks upward, but a slope of more than {15 deg} makes it vertical.',
              } as const,
            ]
          : []),
      ],
    };
  },
});
