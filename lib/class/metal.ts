/** The metal of a class by section, each with its cutting plan. */
import { type BarPlan, planBars, type Stock, tooLong } from '../cutting/bar-plan.ts';
import type { CouponPiece } from './class-exercise.ts';
import { attemptsOf, type Turn } from './turns.ts';

export interface Reuse {
  /** Plates welded on one side in an attempt serve a second one. */
  bothSides: boolean;
  /** Lost from a ring when its weld is cut out and its end beveled again; 0: rings serve once. */
  ringLoss: number;
  /** A ring shorter than this is scrap. */
  ringLeast: number;
}

export interface MetalChoices extends Reuse {
  bar: Stock;
  pipe: Stock;
  /** Added to each ring for facing and beveling. */
  facing: number;
  /** Pieces cut wrong, as a share. */
  spare: number;
}

export interface SectionMetal {
  section: string;
  perInch: number;
  stock: Stock;
  pieces: { length: number; count: number }[];
  /** Undefined where a piece is longer than a bar: `long` says which. */
  plan?: BarPlan;
  long?: number;
}

/** Attempts that one piece serves. */
export function usesOf(piece: CouponPiece, { bothSides, ringLoss, ringLeast }: Reuse): number {
  if (piece.twoSided) return bothSides ? 2 : 1;
  if (!piece.pipe || ringLoss <= 0) return 1;
  return 1 + Math.max(0, Math.floor((piece.length - ringLeast) / ringLoss + 1e-9));
}

/** Pieces to cut for all attempts of a turn, spare included. */
export function piecesOf(turn: Turn, piece: CouponPiece, choices: MetalChoices): number {
  const coupons = Math.ceil(attemptsOf(turn) / usesOf(piece, choices) - 1e-9);
  return Math.ceil(coupons * piece.count * (1 + choices.spare) - 1e-9);
}

/** Every section that the turns need, in the order in which they are needed first. */
export function metalOf(turns: readonly Turn[], choices: MetalChoices): SectionMetal[] {
  const sections = new Map<string, SectionMetal>();
  for (const turn of turns)
    for (const piece of turn.exercise.coupon) {
      const { section, perInch, pipe } = piece;
      const count = piecesOf(turn, piece, choices);
      if (count === 0) continue;
      const stock = pipe ? choices.pipe : choices.bar;
      const found = sections.get(section) ?? { section, perInch, stock, pieces: [] };
      sections.set(section, found);
      const length = piece.length + (pipe ? choices.facing : 0);
      const same = found.pieces.find((it) => it.length === length);
      if (same) same.count += count;
      else found.pieces.push({ length, count });
    }
  return [...sections.values()].map((it) => {
    const long = tooLong(
      it.pieces.map(({ length }) => length),
      it.stock,
    );
    if (long !== undefined) return { ...it, long };
    return { ...it, plan: planBars(it.pieces, it.stock) };
  });
}

/** Pounds bought. */
export const boughtMass = ({ plan, stock, perInch }: SectionMetal): number =>
  (plan?.bars ?? 0) * stock.length * perInch;
