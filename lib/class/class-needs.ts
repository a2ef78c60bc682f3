/** All that a class needs, from numbers: the one function behind the page of the class plan. */

import { type GradingLoad, gradingLoad } from './grading-load.ts';
import { type MetalChoices, metalOf, type SectionMetal } from './metal.ts';
import { type Preparation, type PreparationChoices, preparationOf } from './preparation.ts';
import { canPounds, type RodNeed, rodsOf, type Spare } from './rods.ts';
import { type Rotation, rotationOf } from './rotation.ts';
import { type Supply, supplyOf, type Term } from './term.ts';
import { type Store, storeOf } from './tools.ts';
import { atBooth, hoursOf, type Turn } from './turns.ts';
import { type WeekNeeds, weekNeeds } from './week-needs.ts';
import { type Week, weeksOf } from './weeks.ts';
import { type MetalParts, type MetalSaved, metalParts, metalSaved } from './where-metal-goes.ts';

export interface ClassChoices {
  term: Term;
  metal: MetalChoices;
  spare: Spare;
  preparation: PreparationChoices;
}

export interface ClassNeeds {
  supply: Supply;
  /** Booth hours of the class, and of one learner on average. */
  demand: { boothHours: number; each: number };
  metal: SectionMetal[];
  rods: RodNeed[];
  weeks: (Week & WeekNeeds)[];
  preparation: Preparation;
  grading: GradingLoad;
  /** Undefined where everybody has a booth. */
  rotation: Rotation | undefined;
  store: Store;
  parts: MetalParts;
  saved: MetalSaved;
}

/** Lengths in inches, masses in pounds, times in hours; money is counted apart, in `costs.ts`. */
export function classNeeds(turns: readonly Turn[], choices: ClassChoices): ClassNeeds {
  const { term, metal: metalChoices, spare } = choices;
  const supply = supplyOf(term);
  const boothHours = turns.filter(atBooth).reduce((sum, turn) => sum + hoursOf(turn), 0);
  const metal = metalOf(turns, metalChoices);
  const weeks = weeksOf(turns, supply.byWeek);
  const needs = weekNeeds(weeks, metalChoices, spare);
  const cuts = metal.reduce(
    (sum, { pieces }) => sum + pieces.reduce((all, { count }) => all + count, 0),
    0,
  );
  return {
    supply,
    demand: { boothHours, each: boothHours / term.learners },
    metal,
    rods: rodsOf(turns, spare),
    weeks: weeks.map((week, at) => ({ ...week, ...(needs[at] as WeekNeeds) })),
    preparation: preparationOf(turns, choices.preparation, metalChoices, supply.waiting),
    grading: gradingLoad(turns),
    rotation: rotationOf(term, supply),
    store: storeOf(turns, term, supply, needs, cuts, canPounds),
    parts: metalParts(turns, metal, metalChoices),
    saved: metalSaved(turns, metalChoices),
  };
}
