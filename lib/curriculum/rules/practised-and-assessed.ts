import { exercisesInOrder, introducedIn, placeOf } from '../ask.ts';
import type { AuditedExercise } from '../curriculum.ts';
import type { Finding, Rule } from '../rule.ts';

export const practisedAndAssessed: Rule = {
  id: 'practised-and-assessed',
  sentence:
    'Every skill that is introduced is practiced by an exercise, and assessed by one, in its lesson or later.',
  why: 'A skill that nobody asks for at the booth is only a sentence.',
  look: (course, name) => {
    const exercises = exercisesInOrder(course);
    return [...introducedIn(course)].flatMap(([skill, home]) => {
      const from = placeOf(course, home.slug);
      const later = exercises.filter(({ lesson }) => placeOf(course, lesson) >= from);
      const finding = (verb: string, part: string, has: (one: AuditedExercise) => boolean) => {
        const found = later.find(has);
        return {
          holds: found !== undefined,
          says: `${name('skill', skill)} of ${name('lesson', home.slug)} is ${found ? `${verb} by ${name('exercise', found.slug)}` : `not ${verb}`}`,
          at: found
            ? { page: 'exercise', id: found.slug, part, sentence: home.skills[skill] }
            : { page: 'lesson', id: home.slug, part: 'booth-exercise' },
        } satisfies Finding;
      };
      return [
        finding('practiced', 'practices', ({ practises }) => practises.includes(skill)),
        finding('assessed', 'assesses', ({ assesses }) => assesses.includes(skill)),
      ];
    });
  },
};
