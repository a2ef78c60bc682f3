import type { Rule } from '../rule.ts';

export const numbersAreChecked: Rule = {
  id: 'numbers-are-checked',
  sentence: 'Every calculation has values from outside to hold it to.',
  why: 'A formula that nothing checks is a guess with many digits.',
  look: ({ calculations, checks, lessons }, name) => {
    const named = lessons.flatMap((lesson) => lesson.calculations);
    const ids = [...new Set([...calculations.map(({ id }) => id), ...named])];
    return ids.map((id) => {
      const count = checks.filter(({ calculation }) => calculation === id).length;
      return {
        holds: count > 0,
        says: `${name('calculation', id)}: ${count} ${count === 1 ? 'value' : 'values'}`,
        at: { page: 'calculation', id },
      };
    });
  },
};
