/** A term's hours: what the clock and the booths give. Times and lengths in hours. */
export interface Term {
  learners: number;
  booths: number;
  evenings: number;
  perWeek: number;
  start: number;
  end: number;
  /** When the building is locked. */
  lockUp: number;
  /** From the start to the first arc: briefing, walk-round, setting up. */
  setUp: number;
  /** Before the end: clearing, sweeping, sorting scrap. */
  clearing: number;
  /** Somebody stays and watches after the last arc. */
  watch: number;
}

export interface Supply {
  firstArc: number;
  lastArc: number;
  /** Arc hours that the fire watch takes, because the building is locked too early. */
  lostToWatch: number;
  /** Of one evening. */
  arcHours: number;
  /** Evenings of each week; the last may be short. */
  weeks: number[];
  /** Booth hours of the class in each week. */
  byWeek: number[];
  boothHours: number;
  /** Booth hours of one learner in the term, if all take turns. */
  each: number;
  /** Hours in which somebody has no booth: they saw, grind, gauge and do sums. */
  waiting: number;
}

/** Where the building is locked before the fire watch is over, the last arc goes out earlier. */
export function supplyOf(term: Term): Supply {
  const { learners, booths, evenings, perWeek } = term;
  const firstArc = term.start + term.setUp;
  const wanted = term.end - term.clearing;
  const lastArc = Math.min(wanted, term.lockUp - term.watch);
  const arcHours = Math.max(0, lastArc - firstArc);
  const weeks = Array.from({ length: Math.ceil(evenings / perWeek) }, (_, at) =>
    Math.min(perWeek, evenings - at * perWeek),
  );
  const atOnce = Math.min(booths, learners);
  const boothHours = atOnce * arcHours * evenings;
  return {
    firstArc,
    lastArc,
    lostToWatch: Math.max(0, wanted - Math.max(lastArc, firstArc)),
    arcHours,
    weeks,
    byWeek: weeks.map((count) => count * atOnce * arcHours),
    boothHours,
    each: boothHours / learners,
    waiting: (learners - atOnce) * arcHours * evenings,
  };
}
