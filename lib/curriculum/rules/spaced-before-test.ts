import { boothHoursOf, exercisesInOrder, introducedIn, isTest } from '../ask.ts';
import type { Rule } from '../rule.ts';

/** The least that one evening at the booths lasts, in hours; common practice, no source. */
const evening = 3;

export const spacedBeforeTest: Rule = {
  id: 'spaced-before-test',
  sentence: `Between the first exercise of an earlier lesson's skill and a test groove that asks for it lie at least ${evening} hours at the booth, and so a night.`,
  why: 'Practice spread over days holds better than the same practice in one go.',
  look: (course, name) => {
    const introduced = introducedIn(course);
    const inOrder = exercisesInOrder(course);
    const hoursBefore = (index: number) =>
      inOrder.slice(0, index).reduce((sum, exercise) => sum + boothHoursOf(exercise), 0);
    return inOrder.flatMap((exercise, index) => {
      if (!isTest(exercise)) return [];
      return exercise.practises.flatMap((skill) => {
        const home = introduced.get(skill);
        const first = inOrder.findIndex(({ lesson }) => lesson === home?.slug);
        if (!home || home.slug === exercise.lesson || first < 0 || first > index) return [];
        const hours = hoursBefore(index) - hoursBefore(first);
        return [
          {
            holds: hours >= evening,
            says: `${name('exercise', exercise.slug)} asks for ${name('skill', skill)} of ${name('lesson', home.slug)}, ${hours} booth hours after it began`,
            at: {
              page: 'exercise',
              id: exercise.slug,
              part: 'practices',
              sentence: home.skills[skill],
            } as const,
          },
        ];
      });
    });
  },
};
