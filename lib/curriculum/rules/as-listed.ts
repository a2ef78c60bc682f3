import type { Rule } from '../rule.ts';

export const calculationsAsListed: Rule = {
  id: 'calculations-as-listed',
  sentence: 'A lesson lists each calculation that its text computes with, and no other.',
  why: 'Coverage is counted from the list; the list must be the truth.',
  look: ({ lessons }, name) =>
    lessons.flatMap(({ slug, calculations, inText }) =>
      [...new Set([...calculations, ...inText.calculations])].map((id) => {
        const fault = !calculations.includes(id)
          ? ', which it does not list'
          : !inText.calculations.includes(id)
            ? ' in its list only'
            : '';
        return {
          holds: fault === '',
          says: `${name('lesson', slug)} has ${name('calculation', id)}${fault}`,
          at: { page: 'lesson', id: slug, part: 'the-numbers' },
        };
      }),
    ),
};
