/** Nothing lies about that no lesson leads to. */
import { placeOf } from '../ask.ts';
import type { Rule } from '../rule.ts';

export const noOrphanExercise: Rule = {
  id: 'no-orphan-exercise',
  sentence: 'Every exercise belongs to a lesson that names it, and every exercise named exists.',
  why: 'An exercise that no lesson leads to is never done.',
  look: (course, name) => [
    ...course.exercises.map(({ slug, lesson }) => ({
      holds: course.lessons.some((one) => one.slug === lesson && one.exercises.includes(slug)),
      says: `${name('exercise', slug)} belongs to ${name('lesson', lesson)}`,
      at: { page: 'exercise', id: slug } as const,
    })),
    ...course.lessons.flatMap(({ slug, exercises }) =>
      exercises.map((id) => ({
        holds: course.exercises.some((one) => one.slug === id && one.lesson === slug),
        says: `${name('lesson', slug)} names ${name('exercise', id)}`,
        at: { page: 'lesson', id: slug, part: 'booth-exercise' } as const,
      })),
    ),
  ],
};

export const noOrphanCalculation: Rule = {
  id: 'no-orphan-calculation',
  sentence:
    'Every calculation is used by a lesson, linked from its text, or a tool for whoever runs a class; and every one that a lesson names exists.',
  why: 'A number that no lesson explains is used blindly.',
  look: ({ calculations, lessons }, name) => [
    ...calculations.map(({ id, forTeaching }) => {
      const home = lessons.find(
        (one) => one.calculations.includes(id) || one.inText.calculators.includes(id),
      );
      return {
        holds: home !== undefined || forTeaching,
        says: `${name('calculation', id)} is used ${home ? `in ${name('lesson', home.slug)}` : forTeaching ? 'to run a class' : 'nowhere'}`,
        at: { page: 'calculation', id } as const,
      };
    }),
    ...lessons.flatMap((lesson) =>
      lesson.calculations
        .filter((id) => !calculations.some((one) => one.id === id))
        .map((id) => ({
          holds: false,
          says: `${name('lesson', lesson.slug)} names ${id}, which does not exist`,
          at: { page: 'lesson', id: lesson.slug, part: 'the-numbers' } as const,
        })),
    ),
  ],
};

export const noOrphanSource: Rule = {
  id: 'no-orphan-source',
  sentence: 'Every publication on the page of sources is cited, and every one cited is listed.',
  why: 'A list of books that nobody leaned on looks like proof and is none.',
  look: ({ sources, lessons, exercises, calculations, checks, outlines }, name) => {
    const cited = [
      ...lessons.flatMap((one) => one.sources.map(({ source }) => ({ source, by: one.slug }))),
      ...exercises.flatMap((one) => one.grading.map(({ source }) => ({ source, by: one.slug }))),
      ...calculations.flatMap((one) => one.sources.map(({ source }) => ({ source, by: one.id }))),
      ...outlines.map(({ source, id }) => ({ source, by: id })),
      ...checks.map(({ source, calculation }) => ({ source, by: calculation })),
    ];
    const unknown = cited.filter(({ source }) => source && !sources.includes(source));
    return [
      ...sources.map((id) => {
        const count = cited.filter(({ source }) => source === id).length;
        return {
          holds: count > 0,
          says: `${name('source', id)} is cited ${count === 1 ? 'once' : `${count} times`}`,
          at: { page: 'source', id } as const,
        };
      }),
      ...unknown.map(({ source, by }) => ({
        holds: false,
        says: `${by} cites ${source}, which is not listed`,
        at: { page: 'source', id: source ?? '' } as const,
      })),
    ];
  },
};

export const noOrphanTerm: Rule = {
  id: 'no-orphan-term',
  sentence:
    'Every term is defined once, and linked from the text of a lesson, not before it is defined.',
  why: 'A word in the glossary that no lesson uses is ballast; a word used before it is explained is a wall.',
  look: (course, name) =>
    course.lessons.flatMap((lesson) =>
      Object.keys(lesson.terms).map((term) => {
        const home = course.lessons.find((one) => term in one.terms);
        const first = course.lessons.find(({ inText }) => inText.terms.includes(term));
        const inTime = first && placeOf(course, first.slug) >= placeOf(course, lesson.slug);
        const where = first ? `first linked in ${name('lesson', first.slug)}` : 'linked nowhere';
        return {
          holds: home === lesson && inTime === true,
          says: `${term}, defined in ${name('lesson', lesson.slug)}${!home || home === lesson ? '' : ` and in ${name('lesson', home.slug)}`}, ${where}`,
          at: { page: 'term', id: term },
        };
      }),
    ),
};
