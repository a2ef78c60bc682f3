import { exercisesInOrder, isTest } from '../ask.ts';
import type { Rule } from '../rule.ts';

/** The positions that a welder passes on his way round a fixed pipe. */
const alongThePipe: Record<string, readonly string[]> = {
  'pipe 2G': ['horizontal'],
  'pipe 5G': ['overhead', 'vertical', 'flat'],
  'pipe 6G': ['overhead', 'vertical', 'horizontal', 'flat', 'pipe 2G', 'pipe 5G'],
};

export const trainedBeforeTested: Rule = {
  id: 'trained-before-tested',
  sentence:
    'Every position is trained before a groove is judged in it; a fixed pipe, in each position that it passes through.',
  why: 'A test in a position that was never practiced measures luck, and uses up steel.',
  look: (course, name) => {
    const inOrder = exercisesInOrder(course);
    return inOrder.flatMap((exercise, index) => {
      if (!isTest(exercise)) return [];
      const trained = new Set(
        inOrder
          .slice(0, index)
          .flatMap(({ position, practises }) => (practises.length > 0 ? position : [])),
      );
      return exercise.position
        .flatMap((position) => alongThePipe[position] ?? [position])
        .map((position) => ({
          holds: trained.has(position),
          says: `${name('exercise', exercise.slug)} tests ${position}, ${trained.has(position) ? 'trained earlier' : 'not trained before'}`,
          at: { page: 'exercise', id: exercise.slug } as const,
        }));
    });
  },
};
