import { exercisesInOrder } from '../ask.ts';
import type { AuditedExercise } from '../curriculum.ts';
import type { Rule } from '../rule.ts';

const traits = {
  position: ({ position }: AuditedExercise) => position,
  joint: ({ joint }: AuditedExercise) => joint,
  'electrode diameter': ({ electrodes }: AuditedExercise) =>
    electrodes.map(({ diameter }) => diameter),
  'pipe size': ({ pipes }: AuditedExercise) => pipes,
};
type Trait = keyof typeof traits;

export const oneStepAtATime: Rule = {
  id: 'one-step-at-a-time',
  sentence:
    'No exercise is the first with its position and its joint at once, nor with three of position, joint, electrode diameter and pipe size.',
  why: 'When several things are new and the weld is poor, nobody can tell which of them did it.',
  look: (course, name) => {
    const welded = exercisesInOrder(course).filter(
      ({ electrodes, position, joint }) =>
        electrodes.length > 0 && position.length > 0 && joint.length > 0,
    );
    return welded.slice(1).map((exercise, index) => {
      const before = welded.slice(0, index + 1);
      const fresh = (Object.keys(traits) as Trait[]).filter((trait) => {
        const own = traits[trait](exercise);
        const known = new Set(before.flatMap(traits[trait]));
        return own.length > 0 && !own.some((one) => known.has(one));
      });
      const both = fresh.includes('position') && fresh.includes('joint');
      return {
        holds: !both && fresh.length < 3,
        says: `${name('exercise', exercise.slug)}: new ${fresh.length === 0 ? 'is none of them' : `are ${fresh.join(', ')}`}`.replace(
          /are (?=[^,]*$)/,
          'is ',
        ),
        at: { page: 'exercise', id: exercise.slug },
      };
    });
  },
};
