import { introducedIn, placeOf } from '../ask.ts';
import type { Rule } from '../rule.ts';

export const needsComeFirst: Rule = {
  id: 'needs-come-first',
  sentence: 'No lesson needs a skill that an earlier lesson has not introduced.',
  why: 'A learner who meets a word or a motion that nobody showed him thinks the fault is his.',
  look: (course, name) => {
    const introduced = introducedIn(course);
    return course.lessons.flatMap(({ slug, needs }) =>
      needs.map((skill) => {
        const home = introduced.get(skill);
        const holds = home !== undefined && placeOf(course, home.slug) < placeOf(course, slug);
        const where = home ? `introduced in ${name('lesson', home.slug)}` : 'introduced nowhere';
        const at = { page: 'lesson', id: slug, part: 'needs-first' } as const;
        return {
          holds,
          says: `${name('lesson', slug)} needs ${name('skill', skill)}, ${where}`,
          at: holds ? { ...at, sentence: home.skills[skill] } : at,
        };
      }),
    );
  },
};
