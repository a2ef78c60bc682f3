import type { PracticeLists } from '../components/PracticeSheet/PracticeDesk.tsx';
import { loadCalculation } from '../lib/calculations.ts';
import { canBePracticed } from '../lib/practice/scenes.ts';
import { calculatorGroups } from './calculator-groups.ts';
import { lessonsInOrder } from './course.ts';

/** What problems can be made of: lessons and calculations, in the order of the course. */
export async function practiceLists(): Promise<PracticeLists> {
  const groups = await Promise.all(
    calculatorGroups.map(async ({ title, ids }) => {
      const all = await Promise.all(
        ids.map(async (id) => ({ id, calculation: await loadCalculation(id) })),
      );
      const items = all
        .filter(({ id }) => canBePracticed(id))
        .map(({ id, calculation }) => ({ id, title: calculation.title }));
      return { title, items };
    }),
  );
  const usable = new Set(groups.flatMap(({ items }) => items.map(({ id }) => id)));
  const lessons = (await lessonsInOrder())
    .map(({ id, data }) => ({
      id,
      title: data.title,
      calculations: data.calculations.filter((it) => usable.has(it)),
    }))
    .filter(({ calculations }) => calculations.length > 0);
  return {
    lessons,
    groups: groups.filter(({ items }) => items.length > 0),
    opening: { lessons: ['flat-bead'], calculations: [], set: 4021, count: 8 },
  };
}
