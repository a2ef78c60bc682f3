import { introducedIn } from '../ask.ts';
import type { Rule } from '../rule.ts';

export const introducedOnce: Rule = {
  id: 'introduced-once',
  sentence: 'Every skill is introduced once.',
  why: 'Two lessons that introduce the same skill will teach it in two ways.',
  look: (course, name) => {
    const introduced = introducedIn(course);
    return course.lessons.flatMap((lesson) =>
      Object.keys(lesson.skills).map((skill) => {
        const home = introduced.get(skill);
        const holds = home === lesson;
        return {
          holds,
          says: `${name('lesson', lesson.slug)} introduces ${name('skill', skill)}${home && !holds ? `, as ${name('lesson', home.slug)} does` : ''}`,
          at: { page: 'lesson', id: lesson.slug },
        };
      }),
    );
  },
};
