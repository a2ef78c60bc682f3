/** What a booth sheet and a grading sheet tell of an exercise. Texts may hold quantities in braces. */
import type { Known } from '../calculation.ts';

export interface SheetPoint {
  item: string;
  limit: string;
  /** The figure in the limit, as the source prints it, and its metric figure where it prints one. */
  amount?: string;
  metric?: string;
  /** Title of the publication and the place in it; common practice has none. */
  source?: string;
  known: Known;
}

export interface SheetNumbers {
  /** Id of a calculation, what the exercise gives it, and the outputs to hit. */
  of: string;
  given: Readonly<Record<string, string>>;
  want: readonly string[];
  /** Its drawing shows the coupon. */
  drawing?: boolean;
}

export interface ExerciseSheet {
  slug: string;
  title: string;
  lesson: { slug: string; title: string };
  summary: string;
  position: readonly string[];
  joint: readonly string[];
  minutes: number;
  attempts: number;
  metal: readonly string[];
  rods: readonly string[];
  /** The practice procedure as names and texts; none without an arc. */
  procedure: readonly { name: string; text: string }[];
  /** Each electrode's current: from which to start, lowest, highest. */
  currents: readonly {
    electrode: string;
    start: string;
    low: string;
    high: string;
    /** It is for the root, where another electrode fills the joint. */
    root?: boolean;
  }[];
  /** Thickness and diameter as the exercise has them, for the boxes of the booth page. */
  usual: Readonly<Partial<Record<string, string>>>;
  /** A plate of `length` by `width`, where no calculation draws the coupon. */
  plate?: { length: string; width: string; lines: number };
  numbers: readonly SheetNumbers[];
  holdPoints: readonly string[];
  selfCheck: readonly string[];
  handIn: string;
  points: readonly SheetPoint[];
  faults: readonly { see: string; change: string }[];
}
