/** How an instructor weighs the points of an exercise, and where the shop asks for more than the limit. */
export interface PointRubric {
  /** Share in the total; 0 leaves the point out of it. */
  weight: number;
  /** A coupon that misses it is repeated, whatever the total. */
  must: boolean;
  /** The shop's own limit as typed, `1/64 in`; empty: the exercise's own. */
  limit: string;
}

export interface Rubric {
  /** Least total that passes, in percent. */
  passMark: number;
  /** By item of the grading; what is missing has the standard. */
  points: Readonly<Record<string, PointRubric>>;
}

/** Every point counts alike and must pass. */
export const standardPoint: PointRubric = { weight: 1, must: true, limit: '' };
/** Seven points in ten pass: common practice, no source. */
export const standardRubric: Rubric = { passMark: 70, points: {} };

/** The rubric of one point; the standard where nobody has set one. */
export const rubricOf = (rubric: Rubric, item: string): PointRubric =>
  rubric.points[item] ?? standardPoint;

/** What an instructor writes where the eye decides. */
export const byEye = { yes: 'pass', no: 'repeat' } as const;
