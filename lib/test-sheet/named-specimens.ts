/** The specimens of a welder's test as a sheet numbers them. */
import { type Answered, answer, type Typed } from '../answer.ts';
import { readQuantity } from '../text/quantity-text.ts';
import type { SheetCode, SheetRules } from './sheet-rules.ts';

export interface NamedSpecimen {
  /** Such as `3G side bend 1`. */
  id: string;
  kind: string;
}

/**
 * The specimens of a test, numbered: by position where the counts of the single positions add up to
 * those of the test. None where the test has no answer.
 * @param range what test-range is asked, and `whole` its answer
 */
export function namedSpecimens(
  rules: SheetRules,
  range: Typed,
  whole: Answered,
  tests: readonly string[],
): NamedSpecimen[] {
  if (!whole.ok) return [];
  const all = whole.results.specimens as { specimen: string; count: number }[];
  const named = (test: string, of: typeof all): NamedSpecimen[] =>
    of.flatMap(({ specimen: kind, count }) =>
      Array.from({ length: count }, (_, place) => ({ id: `${test} ${kind} ${place + 1}`, kind })),
    );
  const apart = tests.flatMap((test) => {
    const one = answer(rules['test-range'], { ...range, test });
    return one.ok ? named(test, one.results.specimens as typeof all) : [];
  });
  const sums = all.every(
    ({ specimen, count }) => apart.filter(({ kind }) => kind === specimen).length === count,
  );
  return sums && apart.length === named('', all).length ? apart : named(tests.join('+'), all);
}

/** How many of each kind, in one line. */
export function counts(specimens: readonly NamedSpecimen[]): string[] {
  const found = Map.groupBy(specimens, ({ kind }) => kind);
  return [[...found].map(([kind, of]) => `${of.length} × ${kind}`).join(', ')];
}

/** Note 3 of QW-452.1(a): from {3/8 in|10 mm} to under {3/4 in|19 mm}, face and root instead of side. */
export function insteadOf(
  code: SheetCode,
  { thickness }: Typed,
  specimens: readonly NamedSpecimen[],
): string[] {
  if (code !== 'ASME IX' || !specimens.some(({ kind }) => kind === 'side bend')) return [];
  const read = readQuantity(String(thickness), 'in');
  if (!('unit' in read)) return [];
  const [size, end] = read.unit === 'mm' ? [read.value, 19] : [read.value, 3 / 4];
  return size < end
    ? ['Or a face and a root bend instead of each two side bends (2010 QW-452.1, note 3, read)']
    : [];
}
