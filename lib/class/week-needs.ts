/** What has to lie ready in each week: cut pieces and electrodes. The weeks add up to the term. */
import { type MetalChoices, piecesOf } from './metal.ts';
import type { Spare } from './rods.ts';
import { attemptsOf, type Turn } from './turns.ts';
import type { Week } from './weeks.ts';

export interface WeekNeeds {
  attempts: { turn: Turn; count: number }[];
  pieces: { section: string; length: number; count: number }[];
  rods: { kind: string; count: number }[];
}

/** One entry for each week, in their order. Lengths in inches. */
export function weekNeeds(
  weeks: readonly Week[],
  choices: MetalChoices,
  spare: Spare,
): WeekNeeds[] {
  const done = new Map<Turn, number>();
  const wanted = new Map<string, number>();
  const issued = new Map<string, number>();
  return weeks.map(({ shares }) => {
    const needs: WeekNeeds = { attempts: [], pieces: [], rods: [] };
    const burned = new Map<string, number>();
    for (const { turn, share } of shares) {
      const before = done.get(turn) ?? 0;
      const now = Math.min(1, before + share);
      done.set(turn, now);
      // Whole attempts and pieces, early rather than late: what is begun needs its metal.
      const part = (total: number) => upTo(total, now) - upTo(total, before);
      const count = part(attemptsOf(turn));
      if (count > 0) needs.attempts.push({ turn, count });
      for (const piece of turn.exercise.coupon) {
        const many = part(piecesOf(turn, piece, choices));
        if (many === 0) continue;
        const length = piece.length + (piece.pipe ? choices.facing : 0);
        const same = needs.pieces.find(
          (it) => it.section === piece.section && it.length === length,
        );
        if (same) same.count += many;
        else needs.pieces.push({ section: piece.section, length, count: many });
      }
      for (const { kind, count: each } of turn.exercise.rods) {
        const more = each * attemptsOf(turn) * (1 + spare[turn.exercise.stage]) * (now - before);
        const sum = (wanted.get(kind) ?? 0) + more;
        wanted.set(kind, sum);
        burned.set(kind, sum);
      }
    }
    for (const [kind, sum] of burned) {
      const now = Math.ceil(sum - 1e-6);
      const more = now - (issued.get(kind) ?? 0);
      issued.set(kind, now);
      if (more > 0) needs.rods.push({ kind, count: more });
    }
    return needs;
  });
}

const upTo = (total: number, share: number): number => Math.ceil(total * share - 1e-6);
