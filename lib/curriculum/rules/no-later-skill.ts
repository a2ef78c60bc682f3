import { exercisesInOrder, introducedIn, placeOf } from '../ask.ts';
import type { Rule } from '../rule.ts';

export const noLaterSkill: Rule = {
  id: 'no-later-skill',
  sentence: 'No exercise practices or assesses a skill that comes after its lesson.',
  why: 'A coupon must not ask for what has not been taught.',
  look: (course, name) => {
    const introduced = introducedIn(course);
    return exercisesInOrder(course).flatMap(({ slug, lesson, practises, assesses }) =>
      [...new Set([...practises, ...assesses])].map((skill) => {
        const home = introduced.get(skill);
        return {
          holds: home !== undefined && placeOf(course, home.slug) <= placeOf(course, lesson),
          says: `${name('exercise', slug)} of ${name('lesson', lesson)} asks for ${name('skill', skill)}, introduced ${home ? `in ${name('lesson', home.slug)}` : 'nowhere'}`,
          at: {
            page: 'exercise',
            id: slug,
            part: practises.includes(skill) ? 'practices' : 'assesses',
            sentence: home?.skills[skill],
          },
        };
      }),
    );
  },
};
