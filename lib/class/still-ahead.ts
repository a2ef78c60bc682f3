/** Learners who still have an exercise before them, so that metal is counted from where each one is. */
import type { ClassBoard } from '../files/class-board.ts';

/** By slug; `slugs` in the order of the course. An exercise before the one set by hand is done. */
export function stillAhead(
  { learners }: Pick<ClassBoard, 'learners'>,
  slugs: readonly string[],
): Map<string, number> {
  const ahead = new Map(slugs.map((slug) => [slug, 0]));
  for (const { at, coupons } of learners) {
    const passed = new Set(
      coupons.filter(({ result }) => result === 'passed').map(({ exercise }) => exercise),
    );
    for (const slug of slugs.slice(Math.max(0, slugs.indexOf(at))))
      if (!passed.has(slug)) ahead.set(slug, (ahead.get(slug) ?? 0) + 1);
  }
  return ahead;
}
