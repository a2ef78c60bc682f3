import type { Rule } from '../rule.ts';

export const reachableInOrder: Rule = {
  id: 'reachable-in-order',
  sentence:
    'Every lesson has one place in the reading order, in the unit it names, and every place is filled.',
  why: 'A lesson outside the order is found by chance; a gap in it stops the class.',
  look: ({ units, lessons, unplaced }, name) => [
    ...units.flatMap((unit) =>
      unit.lessons.map((slug) => {
        const lesson = lessons.find((one) => one.slug === slug);
        const places = units.flatMap((one) => one.lessons).filter((one) => one === slug).length;
        const fault = !lesson
          ? ', which is not written'
          : lesson.unit !== unit.id
            ? `, which says ${name('unit', lesson.unit)}`
            : places > 1
              ? ', twice in the order'
              : '';
        return {
          holds: fault === '',
          says: `${name('unit', unit.id)} has ${name('lesson', slug)}${fault}`,
          at: { page: 'lesson', id: slug } as const,
        };
      }),
    ),
    ...unplaced.map((slug) => ({
      holds: false,
      says: `${name('lesson', slug)} has no place in the order`,
      at: { page: 'lesson', id: slug } as const,
    })),
  ],
};
