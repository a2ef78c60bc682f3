import { exercisesInOrder, placeOf } from '../ask.ts';
import { exposures } from '../exposures.ts';
import type { Rule } from '../rule.ts';

export const hazardsPrecedeExposure: Rule = {
  id: 'hazards-precede-exposure',
  sentence:
    'No exercise exposes anyone to a hazard that its lesson or an earlier one has not named.',
  why: 'Knowing it afterward is too late.',
  look: (course, name) =>
    exercisesInOrder(course).flatMap((exercise) =>
      exposures(exercise).map(({ hazard, step }) => {
        const home = course.lessons.find(({ hazards }) => hazards.includes(hazard));
        const first = home ? placeOf(course, home.slug) : Number.POSITIVE_INFINITY;
        return {
          holds: first <= placeOf(course, exercise.lesson),
          says: `${name('exercise', exercise.slug)} of ${name('lesson', exercise.lesson)} meets ${name('hazard', hazard)}, named ${home ? `in ${name('lesson', home.slug)}` : 'nowhere'}`,
          at: {
            page: 'exercise',
            id: exercise.slug,
            ...(step && { part: 'steps', sentence: step }),
          },
        };
      }),
    ),
};
