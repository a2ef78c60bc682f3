import type { Rule } from '../rule.ts';

export const exerciseWithAcceptance: Rule = {
  id: 'exercise-with-acceptance',
  sentence:
    'Every lesson has an exercise with acceptance points, and at least one of them in each lesson names its source.',
  why: 'Without a limit that can be looked up, a pass depends on who is looking.',
  look: ({ lessons, exercises }, name) =>
    lessons.flatMap(({ slug, exercises: names }) => {
      const at = { page: 'lesson', id: slug, part: 'good-enough-to-move-on' } as const;
      if (names.length === 0)
        return [{ holds: false, says: `${name('lesson', slug)} has no exercise`, at }];
      const own = names.flatMap((id) => exercises.find(({ slug }) => slug === id) ?? []);
      const sourced = own.flatMap(({ grading }) => grading).filter(({ source }) => source);
      return [
        ...own.map((one) => ({
          holds: one.grading.length > 0,
          says: `${name('exercise', one.slug)} is judged by ${one.grading.length} points`,
          at: { page: 'exercise', id: one.slug, part: 'judged-by' } as const,
        })),
        {
          holds: sourced.length > 0,
          says: `${name('lesson', slug)} has ${sourced.length} acceptance points that name a source`,
          at,
        },
      ];
    }),
};
