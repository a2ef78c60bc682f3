/** Work beside the booths: bevels to make, discs to wear out. */
import { type MetalChoices, usesOf } from './metal.ts';
import { attemptsOf, hoursOf, type Turn } from './turns.ts';

export interface PreparationChoices {
  /** Minutes to bevel and clean the pieces of one groove coupon. */
  grooveMinutes: number;
  /** Minutes to cut out, bevel and face one pipe joint. */
  pipeMinutes: number;
  /** Hours of others: a helper, the instructor, a weekday. */
  otherHours: number;
}

export interface Preparation {
  grooves: number;
  /** Pipe joints that are beveled in the shop: again, or at all where they are not bought beveled. */
  joints: number;
  hours: number;
  /** Hours of side stations that the exercises themselves ask for. */
  sideHours: number;
  /** What is left of the hours without a booth, and the hours of others. */
  capacity: number;
  grindingDiscs: number;
  flapDiscs: number;
}

/** Pieces that one disc lasts for: common practice, no source. A pipe joint counts as a groove. */
const groovesPerGrindingDisc = 2;
const teesPerGrindingDisc = 6;
const piecesPerFlapDisc = 8;

/**
 * What the shop makes ready beside the booths for these turns, and the discs that it wears out.
 * @param waiting hours of the term in which somebody has no booth
 */
export function preparationOf(
  turns: readonly Turn[],
  { grooveMinutes, pipeMinutes, otherHours }: PreparationChoices,
  metal: MetalChoices,
  waiting: number,
): Preparation {
  const total = (of: (turn: Turn) => number) => turns.reduce((sum, turn) => sum + of(turn), 0);
  const work = (kind: string) =>
    total((turn) => (turn.exercise.work === kind ? attemptsOf(turn) : 0));
  const beveledHere = (turn: Turn) => turn.exercise.coupon.some(({ bevel }) => bevel === 'here');
  const grooves = total((turn) =>
    turn.exercise.work === 'groove' && beveledHere(turn) ? attemptsOf(turn) : 0,
  );
  const joints = total((turn) => {
    const ring = turn.exercise.coupon.find(({ pipe }) => pipe);
    if (!ring) return 0;
    const all = attemptsOf(turn);
    return beveledHere(turn) ? all : all - Math.ceil(all / usesOf(ring, metal) - 1e-9);
  });
  const sideHours = total((turn) => (turn.exercise.station === 'side' ? hoursOf(turn) : 0));
  const ground = work('groove') + work('pipe');
  const tees = work('tee');
  return {
    grooves,
    joints,
    hours: (grooves * grooveMinutes + joints * pipeMinutes) / 60,
    sideHours,
    capacity: Math.max(0, waiting - sideHours) + otherHours,
    grindingDiscs: Math.ceil(ground / groovesPerGrindingDisc + tees / teesPerGrindingDisc - 1e-9),
    flapDiscs: Math.ceil((ground + tees) / piecesPerFlapDisc - 1e-9),
  };
}
