/** Learners who still have an exercise before them, so that metal is counted from where each one is. */
import type { ClassBoard } from '../files/class-board.ts';

/** By slug; `slugs` in the order of the course. An exercise before the one set by hand is done. */
export function stillAhead(
  { learners }: Pick<ClassBoard, 'learners'>,
  slugs: readonly string[],
): Map<string, number> {
  const left = learners.map(({ at, coupons }) => ({
    from: slugs.indexOf(at),
    passed: new Set(
      coupons.filter(({ result }) => result === 'passed').map(({ exercise }) => exercise),
    ),
  }));
  return new Map(
    slugs.map((slug, place) => [
      slug,
      left.filter(({ from, passed }) => from <= place && !passed.has(slug)).length,
    ]),
  );
}
