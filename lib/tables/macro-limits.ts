/**
 * What a cut and etched weld is held to, by code. Both unit systems are printed; neither is
 * converted from the other.
 */
import type { Citation } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';

/** Codes and tests by which a fillet’s section is looked at. */
export const macroCodes = [
  'AWS D1.1',
  'ASME IX, welder’s test',
  'ASME IX, procedure test',
] as const;
export type MacroCode = (typeof macroCodes)[number];

/** Codes by which a groove's section is looked at; ASME IX has no section for a groove's procedure. */
export const grooveCodes = ['AWS D1.1', 'ASME IX, welder’s test'] as const;
export type GrooveCode = (typeof grooveCodes)[number];

/** A limit in inches and in millimeters, as the code prints both. */
const printed = (us: number, metric: number): PrintedFigure => ({ us, metric });

const structural = (known: Citation['known']): Citation => ({
  source: 'aws-d1.1',
  at: 'macroetch of a fillet test, 4.9.4.1 (2015), 6.10.4.1 (2020)',
  known,
});
/** Fusion to the root, not necessarily beyond. */
export const fusedToRoot = structural('read');
/** The rest of that clause: size, undercut, cracks. */
export const structuralMacro = structural('memory');
/** Of a groove that does not go through; held here to those that do as well. */
export const grooveMacro: Citation = {
  source: 'aws-d1.1',
  at: 'macroetch of a partial-penetration groove, 4.9.4.1 (2015), 6.10.4.1 (2020)',
  known: 'memory',
};
/** The throat to the face's chord, less what a hollow lacks, of the triangle that the size draws. */
export const throatThatCounts: Citation = {
  source: 'aws-d1.1',
  at: 'clause 2.4 (2010)',
  known: 'read',
};
/** Deepest undercut in a section by AWS D1.1; see `structuralMacro`. */
export const structuralUndercut = printed(1 / 32, 1);

/** Root, curve of the face and legs of a welder’s fillet. */
export const welderTest: Citation = { source: 'asme-ix', at: 'QW-184', known: 'memory' };
/** Fusion and legs of a fillet that tests a procedure. */
export const procedureTest: Citation = { source: 'asme-ix', at: 'QW-183', known: 'memory' };
/** Longest line at the root that is not fused, ASME IX; see `welderTest`. */
export const rootIndication = printed(1 / 32, 0.8);
/** Greatest convexity or concavity, ASME IX; see `welderTest`. */
export const faceCurve = printed(1 / 16, 1.5);
/** Greatest difference of the two legs, ASME IX; see `welderTest` and `procedureTest`. */
export const legDifference = printed(1 / 8, 3);
