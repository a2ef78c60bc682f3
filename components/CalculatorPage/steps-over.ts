import type { QuantityInput } from '../../lib/calculation.ts';

/** Five round steps over an input's usual range, in its declared unit. */
export function stepsOver({ usual, whole }: QuantityInput, count = 5): number[] {
  const { min, max } = usual ?? {};
  if (min === undefined || max === undefined) return [];
  const round = (value: number) => (whole ? Math.round(value) : Number(value.toPrecision(2)));
  const steps = Array.from({ length: count }, (_, index) =>
    round(min + ((max - min) * index) / (count - 1)),
  );
  return [...new Set(steps)];
}
