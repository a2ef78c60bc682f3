/** The rules behind what a welder's test covers, as reasons under the answer. */
import type { Reason } from '../calculation.ts';
import type { QualifiedSizes } from '../tables/qualified-sizes.ts';
import type { Code, Form, Positions } from '../tables/test-positions.ts';
import type { Deposit } from './tested-fillers.ts';

const fillerRules: Readonly<Record<Code, Reason>> = {
  'AWS D1.1': {
    text: 'A test with a higher F-number covers the lower ones, in the same kind of backing. The coupon’s thickness counts, whatever each filler laid.',
    cite: { source: 'aws-d1.1', at: 'Table 6.13 (2020)', known: 'memory' },
  },
  'ASME IX': {
    text: 'Each filler counts for itself: twice its deposit, or any thickness from {1/2 in|13 mm} laid in three layers or more.',
    cite: { source: 'asme-ix', at: '2010 QW-452.1(b), QW-404.30', known: 'read' },
  },
};

/** The row of the position table, and where the codes part. */
export function positionReasons(code: Code, form: Form, test: string, row: Positions): Reason[] {
  const because: Reason[] = [{ kind: 'row', text: `${code}, ${form}, ${test}.`, cite: row.cite }];
  if (test === '3G' && form === 'plate')
    because.push({
      text: 'The codes differ here: AWS D1.1 gives 3G the horizontal groove as well, ASME IX gives flat and vertical only.',
      cite: { source: 'aws-d1.1', at: '2020 Table 6.10', known: 'read' },
    });
  if (row.onPipe)
    because.push({ text: `From this plate test also ${row.onPipe}.`, cite: row.cite });
  return because;
}

/** The rows of the size tables. What a row leaves open is told from memory. */
export const sizeReasons = ({
  notes,
  cautions = [],
  cite,
}: Pick<QualifiedSizes, 'notes' | 'cautions' | 'cite'>): Reason[] => [
  ...notes.map((text): Reason => ({ kind: 'row', text, cite })),
  ...cautions.map(
    (text): Reason => ({ kind: 'caution', text, cite: { ...cite, known: 'memory' } }),
  ),
];

/** How the fillers count, and what no deposit over backing gives: an open root. */
export function fillerReasons(code: Code, groove: boolean, deposits: readonly Deposit[]): Reason[] {
  const backing433 = { source: 'asme-ix', at: 'QW-433', known: 'memory' } as const;
  const openRoots = deposits.filter(({ backing }) => backing === 'without backing');
  const because = [fillerRules[code]];
  if (code === 'ASME IX' && deposits.length > 1)
    for (const { classification } of openRoots)
      because.push({
        text: `${classification} as an open root is qualified by its own deposit alone. What the other fillers add to it is over backing.`,
        cite: backing433,
      });
  if (!groove) return because;
  if (openRoots.length > 0 && openRoots.length < deposits.length)
    because.push({
      kind: 'caution',
      text: 'A filler that lay over an open root counts as welded with backing: this test does not qualify it for an open root.',
      cite: backing433,
    });
  if (openRoots.length === 0)
    because.push({
      kind: 'caution',
      text: 'Backing was used throughout, so an open root is not qualified.',
    });
  return because;
}
