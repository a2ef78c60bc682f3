/** What a class plan has to know of an exercise. Lengths in inches, masses in pounds. */
export interface CouponPiece {
  /** What is bought, quantities in braces: `flat bar {3/8 in} × {4 in}`. */
  section: string;
  pipe?: true;
  /** Pounds an inch of it weighs. */
  perInch: number;
  length: number;
  /** Pieces in one coupon. */
  count: number;
  /** One attempt welds one side only, so that the piece can serve twice. */
  twoSided?: true;
  bevel?: 'here' | 'bought';
}

export interface RodLot {
  /** Classification and diameter, quantities in braces: `E7018 {1/8 in}`. */
  kind: string;
  /** Pounds that one whole electrode weighs. */
  each: number;
  /** For one attempt. */
  count: number;
}

/** Beginners waste most: the spare follows the stage. */
export type Stage = 'early' | 'middle' | 'late';

export interface ClassExercise {
  slug: string;
  title: string;
  /** Its lesson's place in the course, from 1. */
  lesson: number;
  stage: Stage;
  /** `side`: saw, grinder, gauge or paper, done while others weld. */
  station: 'booth' | 'side';
  minutes: number;
  attempts: number;
  coupon: CouponPiece[];
  rods: RodLot[];
  /** A tee or a groove is ground; a pad is not. */
  work: 'groove' | 'tee' | 'pipe' | 'other';
  /** Straps are bent. */
  bends?: true;
  /** Passes in each weld of a tee. */
  passes?: number;
}
