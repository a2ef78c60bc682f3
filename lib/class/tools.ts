/**
 * What a class needs beside metal, electrodes and discs: hand tools, lenses, bins, the oven. Counts are
 * custom, not code; a shop that counts its own knows better.
 */
import type { Supply, Term } from './term.ts';
import { attemptsOf, type Turn } from './turns.ts';
import type { WeekNeeds } from './week-needs.ts';

/** What wears out, by custom. */
export const wear = {
  /** Booth hours that a wire brush lasts. */
  brush: 100,
  /** Booth hours that a clear cover plate lasts. */
  coverPlate: 25,
  /** Cuts that a saw blade lasts. */
  blade: 400,
} as const;

export interface ToolNeed {
  tool: string;
  count: number;
  /** How it is counted. */
  why: string;
}

export interface Store {
  /** Pounds of low-hydrogen electrodes that the oven holds on its fullest evening. */
  ovenPounds: number;
  tools: ToolNeed[];
}

/** Covering that belongs into the oven, by the last digit of the classification: 5, 6 and 8. */
const lowHydrogen = (kind: string) => /^E\d\d(?:1[568]|28|48)/.test(kind);

/** Rods to be had in one evening of the week, as whole cans of each kind, since a can is opened whole. */
function ovenOf(
  turns: readonly Turn[],
  weeks: readonly Pick<WeekNeeds, 'rods'>[],
  evenings: readonly number[],
  canPounds: number,
): number {
  const each = new Map(
    turns.flatMap(({ exercise }) => exercise.rods.map((it) => [it.kind, it.each])),
  );
  return Math.max(
    0,
    ...weeks.slice(0, evenings.length).map(({ rods }, at) =>
      rods
        .filter(({ kind }) => lowHydrogen(kind))
        .reduce((sum, { kind, count }) => {
          const tonight = (count / (evenings[at] as number)) * (each.get(kind) as number);
          return sum + Math.ceil(tonight / canPounds - 1e-9) * canPounds;
        }, 0),
    ),
  );
}

/**
 * Nothing where no electrode burns.
 * @param weeks the needs of each week, in the order of the term
 * @param cuts pieces to be sawn
 * @param canPounds pounds in one can of electrodes
 */
export function storeOf(
  turns: readonly Turn[],
  { booths, learners }: Term,
  supply: Supply,
  weeks: readonly Pick<WeekNeeds, 'rods'>[],
  cuts: number,
  canPounds: number,
): Store {
  const arcs = turns.filter((turn) => turn.exercise.rods.length > 0 && attemptsOf(turn) > 0);
  const hours = supply.boothHours;
  const atOnce = Math.min(booths, learners);
  const bent = turns.some((turn) => turn.exercise.bends && attemptsOf(turn) > 0);
  const tools: ToolNeed[] = [
    { tool: 'Chipping hammer', count: atOnce, why: 'one a booth' },
    {
      tool: 'Wire brush',
      count: atOnce + Math.floor(hours / wear.brush),
      why: `one a booth, and one for each ${wear.brush} booth hours`,
    },
    {
      tool: 'Clear cover plate',
      count: learners + Math.floor(hours / wear.coverPlate),
      why: `one a learner, and one for each ${wear.coverPlate} booth hours`,
    },
    { tool: 'Stub bin, metal', count: atOnce, why: 'one a booth' },
    {
      tool: 'Quiver with a lid',
      count: arcs.some(({ exercise }) => exercise.rods.some(({ kind }) => lowHydrogen(kind)))
        ? atOnce
        : 0,
      why: 'one a booth, for low-hydrogen electrodes',
    },
    {
      tool: 'Saw blade',
      count: cuts > 0 ? 1 + Math.floor(cuts / wear.blade) : 0,
      why: `one, and one for each ${wear.blade} cuts`,
    },
    { tool: 'Bend jig with a guard', count: bent ? 1 : 0, why: 'one where straps are bent' },
  ];
  return {
    ovenPounds: ovenOf(turns, weeks, supply.weeks, canPounds),
    tools: arcs.length > 0 ? tools.filter(({ count }) => count > 0) : [],
  };
}
