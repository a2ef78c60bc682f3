/**
 * Filter shades for shielded metal arc welding. Two questions, two kinds of rows: the least shade
 * that the law allows, and the shade to start with. Diameters are in 1/32 in, as printed.
 */
import type { Citation } from '../calculation.ts';

export interface ShadeRow {
  from: number;
  to: number;
  shade: number;
  /** The row says “more than”: its lower end is not in it. */
  above?: true;
}

const read = (source: Citation['source'], at: string): Citation => ({ source, at, known: 'read' });

/** 29 CFR 1910.133(a)(5). Rows that name the same limit overlap there, and the darker is taken. */
export const leastShades = {
  cite: read('osha-1910-133', '(a)(5), shielded metal arc welding'),
  byDiameter: [
    { from: 0, to: 3, shade: 7 },
    { from: 3, to: 5, shade: 8 },
    { from: 5, to: 8, shade: 10 },
    { from: 8, to: Number.POSITIVE_INFINITY, shade: 11, above: true },
  ],
  byCurrent: [
    { from: 0, to: 60, shade: 7 },
    { from: 60, to: 160, shade: 8 },
    { from: 160, to: 250, shade: 10 },
    { from: 250, to: 550, shade: 11 },
  ],
} as const satisfies { cite: Citation; byDiameter: ShadeRow[]; byCurrent: ShadeRow[] };

/** California's older and darker scheme goes by the electrode alone. */
export const startShadesByDiameter: { cite: Citation; rows: readonly ShadeRow[] } = {
  cite: read('cal-t8-3382', 'shielded metal arc welding'),
  rows: [
    { from: 0, to: 5, shade: 10 },
    { from: 5, to: 8, shade: 12 },
    { from: 8, to: 12, shade: 14 },
  ],
};

/** Suggested shades by current; none is suggested below 60 A. */
export const startShadesByCurrent: { cite: Citation; rows: readonly ShadeRow[] } = {
  cite: { source: 'ansi-z49.1', at: 'guide for shade numbers, suggested shade', known: 'memory' },
  rows: [
    { from: 60, to: 160, shade: 10 },
    { from: 160, to: 250, shade: 12 },
    { from: 250, to: 550, shade: 14 },
  ],
};
