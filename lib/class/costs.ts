import type { ClassNeeds } from './class-needs.ts';

export interface CostLine {
  /** Section, kind of electrode or disc, as prices name it. */
  thing: string;
  count: number;
  /** Undefined where no price is known. */
  cost?: number;
}

/** Counts times prices of one bar, one can, one disc; in whatever money the prices are. */
export function costsOf(
  { metal, rods, preparation }: ClassNeeds,
  prices: ReadonlyMap<string, number>,
): { lines: CostLine[]; total: number; priced: boolean } {
  const counts: [thing: string, count: number][] = [
    ...metal.map((it): [string, number] => [it.section, it.plan?.bars ?? 0]),
    ...rods.map((it): [string, number] => [it.kind, it.cans]),
    ['Grinding disc', preparation.grindingDiscs],
    ['Flap disc', preparation.flapDiscs],
  ];
  const lines = counts
    .filter(([, count]) => count > 0)
    .map(([thing, count]): CostLine => {
      const price = prices.get(thing);
      return { thing, count, ...(price !== undefined && { cost: price * count }) };
    });
  return {
    lines,
    total: lines.reduce((sum, { cost = 0 }) => sum + cost, 0),
    priced: lines.some(({ cost }) => cost !== undefined),
  };
}
