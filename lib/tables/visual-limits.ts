/**
 * What the eye and the gauge may find, by code and purpose. Figures are printed in both unit
 * systems; a reading is compared with those of the system it was taken in.
 */
import type { Citation } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';

/** What a weld is judged as: each has limits of its own. */
export const purposes = [
  'production, static load',
  'production, cyclic load',
  'welder’s test coupon',
] as const;
export type Purpose = (typeof purposes)[number];

/** The largest reading that passes. */
export interface Limit {
  at: PrintedFigure;
  cite: Citation;
}

/** A limit in inches and in millimeters, as the code prints both. */
const printed = (us: number, metric: number): PrintedFigure => ({ us, metric });
const d11 = (place: string, known: Citation['known']): Citation => ({
  source: 'aws-d1.1',
  at: place,
  known,
});
const b313 = (place: string): Citation => ({
  source: 'asme-b31.3',
  at: `1996 Table 341.3.2, ${place}`,
  known: 'read',
});

/** AWS D1.1, production welds: the table of visual criteria, as it was read in the edition of 2000. */
export const table2000 = d11('2000 Table 6.1 (8.1 in 2020)', 'read');
/** The rows of that table that were not read. */
export const table2000memory = d11('Table 6.1 (8.1 in 2020)', 'memory');
/** Of a welder's test, and of the clause on visual examination that it refers to. */
export const testClause = d11('4.8.1 and 4.30.1 (2000), 6.10.1 (2020), as quoted', 'read');
/** Of the same clause, what it says of a root that nothing backed. */
const testRoot = d11('4.8.1 (2000), 6.10.1 (2020), root of an open joint', 'memory');
/** AWS D1.1, weld profiles: overlap. */
export const profiles = d11('2015 clause 5.23', 'read');
/** ASME IX: the visual criteria of a welder's test. */
export const sectionNine: Citation = { source: 'asme-ix', at: 'QW-194', known: 'memory' };
/** ASME B31.3: one row of its table, by the name it has there. */
export const processPiping = b313;

/** Undercut, its depth, by what the weld is judged as. */
export const undercut = {
  thin: { at: printed(1 / 32, 1), cite: table2000 },
  /** For an accumulated 2 in in any 12 in, where the part is thinner than 1 in. */
  thinShort: { at: printed(1 / 16, 2), cite: table2000 },
  thick: { at: printed(1 / 16, 2), cite: table2000 },
  cyclicPrimary: { at: printed(0.01, 0.25), cite: d11('2015 Table 6.1(7)(B)', 'read') },
  cyclicOther: { at: printed(1 / 32, 1), cite: table2000memory },
  test: { at: printed(1 / 32, 1), cite: testClause },
  piping: { at: printed(1 / 32, 1), cite: b313('undercut') },
} satisfies Record<string, Limit>;
/** From this thickness on a part counts as thick, in the rows of undercut. */
export const undercutThickFrom = printed(1, 25);
/** In this length of a thin part's weld, deeper undercut may add up to `undercutSum`. */
export const undercutWindow = printed(12, 300);
/** The longest that deeper undercut may be in that length. */
export const undercutSum = printed(2, 50);

/** How far below its size a fillet may fall, for a tenth of its length; see `table2000`. */
export const undersize: readonly { upTo: PrintedFigure; by: PrintedFigure }[] = [
  { upTo: printed(3 / 16, 5), by: printed(1 / 16, 2) },
  { upTo: printed(1 / 4, 6), by: printed(3 / 32, 2.5) },
  { upTo: printed(Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY), by: printed(1 / 8, 3) },
];

/** Height of the cover pass by thickness, AWS D1.1; see `reinforcementCite`. */
export const reinforcement: readonly { upTo: PrintedFigure; most: PrintedFigure }[] = [
  { upTo: printed(1, 25), most: printed(1 / 8, 3) },
  { upTo: printed(2, 50), most: printed(3 / 16, 5) },
  { upTo: printed(Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY), most: printed(1 / 4, 6) },
];
/** Of `reinforcement`. */
export const reinforcementCite = d11('2010 and later, Schedule A', 'memory');
/** Height of the cover pass of a welder's test. */
export const reinforcementTest: Limit = { at: printed(1 / 8, 3), cite: testClause };
/** Height of the cover pass, and of what protrudes at the root, by the wall, ASME B31.3. */
export const reinforcementPiping: readonly { upTo: PrintedFigure; most: PrintedFigure }[] = [
  { upTo: printed(1 / 4, 6), most: printed(1 / 16, 1.5) },
  { upTo: printed(1 / 2, 13), most: printed(1 / 8, 3) },
  { upTo: printed(1, 25), most: printed(5 / 32, 4) },
  { upTo: printed(Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY), most: printed(3 / 16, 5) },
];

const staticPores = d11('Table 6.1(8)(A), as quoted', 'read');
/** Piping porosity under static load: diameters of pores of 1/32 in and more, added up in an inch. */
export const porosityPerInch: Limit = { at: printed(3 / 8, 10), cite: staticPores };
/** The same, added up in a foot. */
export const porosityPerFoot: Limit = { at: printed(3 / 4, 20), cite: staticPores };
/** In a groove across the tension, under either load. */
export const noPores: Limit = { at: printed(0, 0), cite: staticPores };
/** Under cyclic load pores are counted, and none may be larger than this. */
export const largestPore: Limit = { at: printed(3 / 32, 2.5), cite: table2000memory };
/** Pores under cyclic load: how many in which length. */
export const mostPores = { count: 1, in: printed(4, 100), cite: table2000memory };

/** Two parts in a butt joint: a tenth of the thinner one, and no more than this. */
export const misalignment = {
  share: 0.1,
  at: printed(1 / 8, 3),
  cite: d11('5.21.3 (2015), 7.21.3 (2020), alignment of butt joints', 'memory'),
};
/** Loose spatter, which is brushed off. */
export const spatterCite = d11(
  '5.29.2 (2015), 7.29.2 (2020), cleaning of finished welds',
  'memory',
);
/** Arc strikes outside the weld. */
export const strikeCite = d11('2015 clause 5.28', 'memory');

/** The back of an open root: how far it may be hollow. */
export const rootConcavity: Limit = { at: printed(1 / 16, 2), cite: testRoot };
/** How far it may bulge. */
export const meltThrough: Limit = { at: printed(1 / 8, 3), cite: testRoot };
/** Depth of incomplete penetration, ASME B31.3: this, and no more than the share of the wall. */
export const incompletePenetrationPiping = {
  depth: printed(1 / 32, 1),
  share: 0.2,
  cite: b313('incomplete penetration'),
};
