/** Where the metal goes: what was bought, part by part, and what using a coupon again saves. Pounds. */
import { boughtMass, type MetalChoices, piecesOf, type SectionMetal, usesOf } from './metal.ts';
import { attemptsOf, type Turn } from './turns.ts';

export interface MetalParts {
  bought: number;
  /** Welded on. */
  coupons: number;
  sparePieces: number;
  /** Taken off rings before they are welded. */
  facing: number;
  cuts: number;
  trim: number;
  /** Ends too short for a piece. */
  rest: number;
}

export interface MetalSaved {
  /** By welding on both sides of a plate. */
  sides: number;
  /** By cutting the weld out of a ring and beveling it again. */
  rings: number;
  /** By running all passes of a fillet in one tee, and not a tee for each. */
  passes: number;
}

const sumOf = <T>(list: readonly T[], of: (it: T) => number): number =>
  list.reduce((sum, it) => sum + of(it), 0);

/** The parts add up to what was bought. Sections with a piece longer than a bar are left out. */
export function metalParts(
  turns: readonly Turn[],
  metal: readonly SectionMetal[],
  choices: MetalChoices,
): MetalParts {
  const planned = metal.flatMap((it) => (it.plan ? [{ ...it, plan: it.plan }] : []));
  const names = new Set(planned.map(({ section }) => section));
  const each = (of: (turn: Turn, piece: Turn['exercise']['coupon'][number]) => number) =>
    sumOf(turns, (turn) =>
      sumOf(turn.exercise.coupon, (piece) =>
        names.has(piece.section) ? of(turn, piece) * piece.perInch : 0,
      ),
    );
  const needed = (turn: Turn, piece: Turn['exercise']['coupon'][number]) =>
    Math.ceil(attemptsOf(turn) / usesOf(piece, choices) - 1e-9) * piece.count;
  const bought = sumOf(planned, boughtMass);
  const coupons = each((turn, piece) => needed(turn, piece) * piece.length);
  const sparePieces = each(
    (turn, piece) => (piecesOf(turn, piece, choices) - needed(turn, piece)) * piece.length,
  );
  const facing = each((turn, piece) =>
    piece.pipe ? piecesOf(turn, piece, choices) * choices.facing : 0,
  );
  const trim = sumOf(planned, ({ plan, stock, perInch }) => plan.bars * stock.trim * perInch);
  const cuts = sumOf(planned, ({ plan, stock, perInch }) =>
    sumOf(plan.patterns, ({ bars, pieces, used }) => {
      const wanted = sumOf(pieces, ({ count }) => count) * stock.kerf;
      return bars * Math.max(0, Math.min(wanted, stock.length - stock.trim - used)) * perInch;
    }),
  );
  const rest = Math.max(0, bought - coupons - sparePieces - facing - cuts - trim);
  return { bought, coupons, sparePieces, facing, cuts, trim, rest };
}

/** Against cutting every coupon new. */
export function metalSaved(turns: readonly Turn[], choices: MetalChoices): MetalSaved {
  const saved: MetalSaved = { sides: 0, rings: 0, passes: 0 };
  for (const turn of turns) {
    const all = attemptsOf(turn);
    for (const piece of turn.exercise.coupon) {
      const one = piece.count * piece.length * piece.perInch;
      const spared = all - Math.ceil(all / usesOf(piece, choices) - 1e-9);
      saved[piece.twoSided ? 'sides' : 'rings'] += spared * one;
      saved.passes += all * ((turn.exercise.passes ?? 1) - 1) * one;
    }
  }
  return saved;
}
