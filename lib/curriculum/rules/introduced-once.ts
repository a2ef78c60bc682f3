import { introducedIn } from '../ask.ts';
import type { Rule } from '../rule.ts';

export const introducedOnce: Rule = {
  id: 'introduced-once',
  sentence: 'Every skill is introduced once.',
  why: 'Two lessons that introduce the same skill will teach it in two ways.',
  look: (course) => {
    const introduced = introducedIn(course);
    return course.lessons.flatMap((lesson) =>
      Object.keys(lesson.skills).map((skill) => {
        const home = introduced.get(skill);
        const holds = home === lesson;
        return {
          holds,
          says: `${lesson.slug} introduces ${skill}${holds ? '' : `, as ${home?.slug} does`}`,
          at: { page: 'lesson', id: lesson.slug },
        };
      }),
    );
  },
};
