import { defineProcedure } from '../calculation.ts';
import { clockOfWeld } from '../geometry/fixed-pipe.ts';
import { weldAngles } from '../inputs/weld-angles.ts';
import { positionNames } from '../tables/weld-positions.ts';
import { clockFace } from '../text/clock-text.ts';
import { positionRow, rowText } from '../welds/weld-position.ts';

export default defineProcedure({
  title: 'The point of the clock that a plate stands for',
  summary: 'From how a practice plate is clamped: which pipe, and which point on it, is like that.',
  inputs: weldAngles,
  outputs: {
    pipeInclination: { label: 'Inclination of the pipe’s axis', symbol: 'α', unit: 'deg' },
    clockAngle: { label: 'Angle from the top of the joint', symbol: 'θ', unit: 'deg' },
    clock: { label: 'On the clock', text: true },
    position: { label: 'Position', words: positionNames },
  },
  beware: [
    'A plate trains the angle and the posture of one point. On the pipe the angle changes while you weld.',
  ],
  cite: [
    { source: 'geometry', at: 'inverse of the position on a fixed pipe', known: 'derived' },
    { source: 'aws-d1.1', at: '2020 Fig. 6.1', known: 'memory' },
  ],
  related: ['plate-for-clock', 'pipe-position', 'groove-position'],
  compute({ axisInclination, faceRotation }) {
    const { pipeInclination, clockAngle } = clockOfWeld(
      axisInclination,
      Math.abs(faceRotation - 180),
    );
    const row = positionRow('groove', axisInclination, faceRotation);
    const upright = pipeInclination > 90 - 1e-6;
    return {
      pipeInclination,
      clockAngle,
      clock: upright
        ? 'anywhere round an upright pipe'
        : `${clockFace(clockAngle)}, or ${clockFace(360 - clockAngle)} as in a mirror`,
      position: row.position,
      because: [
        {
          text: 'A face that looks straight up or straight down belongs to a level pipe. The more it looks sideways, the steeper the pipe.',
          cite: { source: 'geometry', at: 'sin α = |sin R|·cos I', known: 'derived' },
        },
        { kind: 'row', text: rowText(row), cite: row.cite },
      ],
    };
  },
});
