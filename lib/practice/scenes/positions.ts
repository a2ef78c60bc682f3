/** Positions: round a fixed pipe, and plate that stands for it. */
import type { Scene } from '../scene.ts';

export default {
  'pipe-position': [
    {
      told: [
        'A fixed pipe is inclined {pipeInclination} from level. You stand {clockAngle} from the top of its joint.',
        'The axis of a pipe rises {pipeInclination}, and you weld at {clockAngle} from the top of the joint.',
      ],
      asked: { position: ['Which position is that?', 'In which position do you weld there?'] },
    },
  ],
  'pipe-position-shares': [
    {
      told: [
        'A fixed pipe is inclined {pipeInclination} from level.',
        'The axis of a fixed pipe rises {pipeInclination}.',
      ],
      asked: {
        vertical: 'What share of the way round is vertical?',
        overhead: 'What share of the way round is overhead?',
      },
      values: { pipeInclination: ['0 deg', '15 deg', '30 deg', '45 deg'] },
    },
  ],
  'plate-for-clock': [
    {
      told: [
        'You want to practice on plate what a pipe inclined {pipeInclination} asks at {clockAngle} from the top.',
        'A plate shall stand for the point {clockAngle} from the top of a pipe inclined {pipeInclination}.',
      ],
      asked: {
        axisInclination: 'How far do you raise one end of the joint?',
        faceTilt: 'How far do you first roll the plate about its joint?',
        nearestTest: 'Which plate test is in the same position?',
      },
      values: { pipeInclination: ['0 deg', '15 deg', '30 deg', '45 deg'] },
    },
  ],
  'clock-for-plate': [
    {
      told: [
        'A practice plate: its joint rises {axisInclination}, and its face is turned to {faceRotation} ({180 deg} looks up, {0 deg} looks down).',
        'You clamp a plate with the joint inclined {axisInclination} and the face turned to {faceRotation}, counted so that {180 deg} looks up.',
      ],
      asked: {
        position: 'Which position is that?',
        clockAngle: 'For which angle from the top of a pipe does it stand?',
      },
      values: {
        axisInclination: ['0 deg', '15 deg', '30 deg', '45 deg', '60 deg'],
        faceRotation: ['0 deg', '90 deg', '120 deg', '150 deg', '180 deg'],
      },
    },
  ],
  'groove-position': [
    {
      told: [
        'The axis of a {weld} weld rises {axisInclination}. Its face is turned to {faceRotation} ({180 deg} looks up, {0 deg} looks down).',
        'A {weld} weld: axis inclined {axisInclination}, face turned to {faceRotation}, counted so that {180 deg} looks up.',
      ],
      asked: { position: ['Which position is that?', 'What do the position figures call it?'] },
      values: {
        axisInclination: [
          '0 deg',
          '10 deg',
          '15 deg',
          '30 deg',
          '45 deg',
          '60 deg',
          '80 deg',
          '90 deg',
        ],
        faceRotation: [
          '0 deg',
          '45 deg',
          '90 deg',
          '120 deg',
          '150 deg',
          '180 deg',
          '225 deg',
          '270 deg',
        ],
      },
    },
  ],
} satisfies Readonly<Record<string, readonly Scene[]>>;
