import { boothHoursOf } from '../ask.ts';
import type { Rule } from '../rule.ts';

export const hoursAddUp: Rule = {
  id: 'hours-add-up',
  sentence:
    'The booth hours of a lesson are the minutes of its booth exercises times their attempts, to the next quarter hour.',
  why: 'A timetable is built on them.',
  look: ({ lessons, exercises }, name) =>
    lessons.map(({ slug, boothHours, exercises: own }) => {
      const hours = own
        .flatMap((id) => exercises.find((one) => one.slug === id) ?? [])
        .reduce((sum, one) => sum + boothHoursOf(one), 0);
      return {
        holds: Math.abs(hours - boothHours) <= 0.25,
        says: `${name('lesson', slug)}: ${boothHours} h stated, ${Math.round(hours * 100) / 100} h from its exercises`,
        at: { page: 'lesson', id: slug, part: 'booth-exercise' },
      };
    }),
};
