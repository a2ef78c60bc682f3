import { exercisesInOrder, placeOf } from '../ask.ts';
import type { Finding, Rule } from '../rule.ts';

/** The hazards that come with every arc. */
const ofTheArc = ['arc-rays', 'fume', 'shock', 'burns', 'fire'];

export const safetyGateFirst: Rule = {
  id: 'safety-gate-first',
  sentence:
    'Before any electrode burns, an exercise without one assesses every skill of the lessons that name the hazards of the arc.',
  why: 'Who has not shown that he can keep safe does not strike.',
  look: (course, name) => {
    const inOrder = exercisesInOrder(course);
    const firstArc = inOrder.findIndex(({ electrodes }) => electrodes.length > 0);
    const before = firstArc < 0 ? inOrder : inOrder.slice(0, firstArc);
    const arc = inOrder[firstArc];
    const first = arc ? name('exercise', arc.slug) : 'any arc';
    const named = ofTheArc.map((hazard): Finding => {
      const home = course.lessons.find(({ hazards }) => hazards.includes(hazard));
      return {
        holds:
          home !== undefined && (!arc || placeOf(course, home.slug) <= placeOf(course, arc.lesson)),
        says: `${name('hazard', hazard)} is named ${home ? `in ${name('lesson', home.slug)}` : 'nowhere'}`,
        at: home
          ? { page: 'lesson', id: home.slug, part: 'hazards-first' }
          : { page: 'lesson', id: course.lessons[0]?.slug ?? '' },
      };
    });
    const skills = course.lessons
      .filter(({ hazards }) => ofTheArc.some((one) => hazards.includes(one)))
      .flatMap((lesson) => Object.keys(lesson.skills).map((skill) => ({ skill, lesson })));
    const gated = skills.map(({ skill, lesson }): Finding => {
      const gate = before.find(({ assesses }) => assesses.includes(skill));
      return {
        holds: gate !== undefined,
        says: gate
          ? `${name('skill', skill)} is assessed by ${name('exercise', gate.slug)} before ${first}`
          : `${name('skill', skill)} of ${name('lesson', lesson.slug)} is not assessed before ${first}`,
        at: gate
          ? { page: 'exercise', id: gate.slug, part: 'assesses', sentence: lesson.skills[skill] }
          : { page: 'lesson', id: lesson.slug, part: 'booth-exercise' },
      };
    });
    return [...named, ...gated];
  },
};
