/**
 * AWS D1.1 prequalified minimum preheat and interpass temperature: Table 3.2 up to 2010, 3.3 in
 * 2015, 5.8 in 2020. Rows reach up to and including the thickness they name. US and metric figures
 * are both printed; neither is converted from the other.
 */
import type { Citation } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';

/** Categories of the table that this course can meet. */
export const categories = ['A', 'B', 'C'] as const;
export type Category = (typeof categories)[number];

const ab: Citation = {
  source: 'aws-d1.1',
  at: '2015 Table 3.3',
  known: 'read',
};
const c: Citation = {
  source: 'aws-d1.1',
  at: '2015 Table 3.3; the metric figures of category C are from memory',
  known: 'memory',
};

export interface PreheatRow {
  /** Largest thickness of the row, in inches and in millimeters, as printed. */
  upTo: PrintedFigure;
  /** Minimum temperature in °F and °C, as printed. */
  minimum: Record<Category, PrintedFigure>;
}

/** Rows from thin to thick; see `citeRow` for how each is known. */
export const preheatRows: readonly PreheatRow[] = [
  {
    upTo: { us: 0.75, metric: 20 },
    minimum: {
      A: { us: 32, metric: 0 },
      B: { us: 32, metric: 0 },
      C: { us: 50, metric: 10 },
    },
  },
  {
    upTo: { us: 1.5, metric: 38 },
    minimum: {
      A: { us: 150, metric: 65 },
      B: { us: 50, metric: 10 },
      C: { us: 150, metric: 65 },
    },
  },
  {
    upTo: { us: 2.5, metric: 65 },
    minimum: {
      A: { us: 225, metric: 110 },
      B: { us: 150, metric: 65 },
      C: { us: 225, metric: 110 },
    },
  },
  {
    upTo: { us: Number.POSITIVE_INFINITY, metric: Number.POSITIVE_INFINITY },
    minimum: {
      A: { us: 300, metric: 150 },
      B: { us: 225, metric: 110 },
      C: { us: 300, metric: 150 },
    },
  },
];

/** Smallest thickness that the table covers. */
export const thinnest = { us: 0.125, metric: 3 };

/** Where the figures of a category stand, and how they are known. */
export const citeRow = (category: Category): Citation => (category === 'C' ? c : ab);

/**
 * Steels by the category that each kind of electrode puts them in. A steel with no entry for a
 * kind has no prequalified row for it: the code gives no answer, and neither do we.
 */
export const preheatSteels: Readonly<
  Record<string, { 'low-hydrogen': Category; 'not low-hydrogen'?: Category }>
> = {
  A36: { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A53 Grade B': { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A106 Grade B': { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A131 Grade A': { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A131 Grade B': { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A131 Grade CS': { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A131 Grade D': { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A131 Grade DS': { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A131 Grade E': { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A500 Grade A': { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A500 Grade B': { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A500 Grade C': { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  A501: { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A516 Grade 55': { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A516 Grade 60': { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A516 Grade 65': { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A516 Grade 70': { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A709 Grade 36': { 'low-hydrogen': 'B', 'not low-hydrogen': 'A' },
  'A537 Class 1': { 'low-hydrogen': 'B' },
  'A537 Class 2': { 'low-hydrogen': 'B' },
  'A572 Grade 42': { 'low-hydrogen': 'B' },
  'A572 Grade 50': { 'low-hydrogen': 'B' },
  'A572 Grade 55': { 'low-hydrogen': 'B' },
  A588: { 'low-hydrogen': 'B' },
  'A618 Grade Ib': { 'low-hydrogen': 'B' },
  'A618 Grade II': { 'low-hydrogen': 'B' },
  'A618 Grade III': { 'low-hydrogen': 'B' },
  'A633 Grade A': { 'low-hydrogen': 'B' },
  'A633 Grade B': { 'low-hydrogen': 'B' },
  'A633 Grade C': { 'low-hydrogen': 'B' },
  'A633 Grade D': { 'low-hydrogen': 'B' },
  'A709 Grade 50': { 'low-hydrogen': 'B' },
  'A709 Grade 50W': { 'low-hydrogen': 'B' },
  'A913 Grade 50': { 'low-hydrogen': 'B' },
  A992: { 'low-hydrogen': 'B' },
  'A572 Grade 60': { 'low-hydrogen': 'C' },
  'A572 Grade 65': { 'low-hydrogen': 'C' },
  'A633 Grade E': { 'low-hydrogen': 'C' },
  'A709 Grade 70W': { 'low-hydrogen': 'C' },
  'API 2W Grade 60': { 'low-hydrogen': 'C' },
  'API 2Y Grade 60': { 'low-hydrogen': 'C' },
  'API 5L Grade X52': { 'low-hydrogen': 'C' },
  A852: { 'low-hydrogen': 'C' },
  'A913 Grade 60': { 'low-hydrogen': 'C' },
  'A913 Grade 65': { 'low-hydrogen': 'C' },
};
