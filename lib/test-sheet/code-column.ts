/** What one code says of a test, in words for a sheet. Every rule is asked for through answer(). */
import { type Answered, answer, type Problem, type Typed } from '../answer.ts';
import type { Citation, ListOutput, Output, Reason } from '../calculation.ts';
import { cutPlace } from '../tables/cut-places.ts';
import type { Form } from '../tables/test-positions.ts';
import { ruleOf } from '../text/inches.ts';
import { printStated, readQuantity } from '../text/quantity-text.ts';
import { speak } from '../text/say.ts';
import { nothing, shown, shownCell } from '../text/shown.ts';
import { sourceName } from '../text/source-name.ts';
import type { System } from '../units.ts';
import { type Cuts, cutLayout } from './cut-layout.ts';
import type { SheetCode, SheetRules } from './sheet-rules.ts';

export interface Specimen {
  /** Such as `3G side bend 1`. */
  id: string;
  kind: string;
}
export interface CodeColumn {
  code: SheetCode;
  /** Why the test has no answer under this code. */
  problems: readonly Problem[];
  /** By label, in the order of the sheet. */
  cells: ReadonlyMap<string, readonly string[]>;
  specimens: readonly Specimen[];
  /** Where they are cut, to be drawn; none where the test has no answer. */
  cuts?: Cuts;
  cautions: readonly string[];
  /** Group of the filler of each deposit. */
  groups: readonly string[];
  /** The last day on which it holds without use; empty where no day is given. */
  until: string;
}
export interface Asked {
  rules: SheetRules;
  code: SheetCode;
  /** For test-range, code included. */
  range: Typed;
  day: string;
  system: System;
}

type Rows = Record<string, unknown>[];
const tidy = (text: string) => text.replace(/\.$/, '');

/**
 * Throws nothing: where the test has no answer under this code, `problems` says why and `cells` is
 * empty.
 */
export function codeColumn(asked: Asked): CodeColumn {
  const { rules, code, range, day, system } = asked;
  const column = { code, problems: [], specimens: [], cautions: [], groups: [], until: '' };
  const found = answer(rules['test-range'], range, system);
  if (!found.ok) return { ...column, problems: found.problems, cells: new Map() };
  const outputs = rules['test-range'].outputs as Record<string, Output>;
  const say = (name: string) => shown(outputs[name] as Output, found.results[name], system);
  const form = String(range.form) as Form;
  const tests = String(range.test).split('+');
  const specimens = specimensOf(asked, found, tests);
  const fillers = found.results.fillers as Rows;
  const list = (outputs.fillers as ListOutput).list;
  const cell = (row: Rows[number], name: string) =>
    shownCell(list[name] as ListOutput['list'][string], row[name], system);
  const ends = answer(rules.continuity, { code, process: 'SMAW', qualified: day, on: day });
  const until = ends.ok ? String(ends.results.currentUntil) : '';
  const places = [...new Set(tests.map((test) => cutPlace(code, form, test).text))];
  const others = [
    ends,
    answer(rules.retest, retestGiven(asked, tests, 'at once')),
    answer(rules['visual-check'], visualGiven(asked), system),
    answer(rules['bent-specimen'], { openings: [] }),
  ].flatMap((one) => (one.ok ? one.because : []));
  const cells = new Map<string, string[]>([
    ['Grooves', [say('positionsGroove')]],
    ['Fillets', [say('positionsFillet')]],
    ['Thickness', [fromTo(say('thicknessFrom'), say('thicknessTo'))]],
    ['Outside diameter of pipe', [fromTo(say('diameterFrom'), say('diameterTo'))]],
    ...fillers.map((row, place): [string, string[]] => [
      `Deposit ${place + 1}: ${cell(row, 'classification')} (${cell(row, 'fNumber')}), ${cell(row, 'backing')}`,
      [fillerText(row, cell), `Also covers: ${cell(row, 'covers')}`],
    ]),
    ['Specimens', [...counts(specimens), ...insteadOf(code, range, specimens)]],
    ['Where they are cut', places],
    ['By eye', limits(asked, rules['visual-check'], visualGiven(asked))],
    ['On a bent strap', limits(asked, rules['bent-specimen'], { openings: [] })],
    [
      'Six months without use',
      [until === '' ? 'write the day of the test' : `good through ${until}`],
    ],
    ['Retest at once', retest(asked, tests, 'at once')],
    ['Retest after training', retest(asked, tests, 'after training')],
    [
      'Known from',
      cites(code, [...found.because, ...others, cutPlace(code, form, tests[0] ?? '')]),
    ],
  ]);
  return {
    ...column,
    cells,
    specimens,
    cuts: cutLayout(code, form, tests, specimens),
    until,
    groups: fillers.map((row) => cell(row, 'fNumber')),
    cautions: found.because
      .filter(({ kind }) => kind === 'caution')
      .map(({ text }) => speak(text, system)),
  };
}

const fromTo = (from: string, to: string) =>
  [from, to].every((one) => one === 'see deposits') ? 'see deposits' : `${from} to ${to}`;

function fillerText(row: Rows[number], cell: (row: Rows[number], name: string) => string): string {
  const inches = row.together;
  const text = cell(row, 'together');
  // On a rule an inch is read as a fraction.
  const onRule = typeof inches === 'number' && /in$/.test(text) && ruleOf(inches) !== undefined;
  const together = onRule ? printStated(inches, 'in') : text;
  return together === nothing ? cell(row, 'reach') : `${cell(row, 'reach')}: up to ${together}`;
}

/** By position where the counts of the single positions add up to those of the test. */
function specimensOf({ rules, range }: Asked, whole: Answered, tests: string[]): Specimen[] {
  if (!whole.ok) return [];
  const all = whole.results.specimens as { specimen: string; count: number }[];
  const named = (test: string, of: typeof all): Specimen[] =>
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

function counts(specimens: readonly Specimen[]): string[] {
  const found = Map.groupBy(specimens, ({ kind }) => kind);
  return [[...found].map(([kind, of]) => `${of.length} × ${kind}`).join(', ')];
}

/** Note 3 of QW-452.1(a): from {3/8 in|10 mm} to under {3/4 in|19 mm}, face and root instead of side. */
function insteadOf(
  code: SheetCode,
  { thickness }: Typed,
  specimens: readonly Specimen[],
): string[] {
  if (code !== 'ASME IX' || !specimens.some(({ kind }) => kind === 'side bend')) return [];
  const read = readQuantity(String(thickness), 'in');
  if (!('unit' in read)) return [];
  const [size, end] = read.unit === 'mm' ? [read.value, 19] : [read.value, 3 / 4];
  return size < end
    ? ['Or a face and a root bend instead of each two side bends (2010 QW-452.1, note 3, read)']
    : [];
}

function visualGiven({ code, range }: Asked): Typed {
  const deposits = (Array.isArray(range.deposits) ? range.deposits : [range]) as Typed[];
  const open = deposits.some(({ backing }) => backing === 'without backing');
  const weld = /F/.test(String(range.test))
    ? 'fillet'
    : open
      ? 'groove, open root'
      : 'groove with backing';
  return { code, purpose: 'welder’s test coupon', weld, thickness: range.thickness };
}

/** The limits of a judging calculation for one code, before anything is read. */
function limits({ code, system }: Asked, by: SheetRules['retest'], given: Typed): string[] {
  const found = answer(by, given, system);
  if (!found.ok) return found.problems.map(({ text }) => speak(text, system));
  return (found.results.items as { code?: string; item: string; limit: string }[])
    .filter((one) => one.code === undefined || one.code === code)
    .map(({ item, limit }) => `${item}: ${speak(limit, system)}`);
}

const retestGiven = ({ code, range }: Asked, tests: string[], when: string): Typed => ({
  code,
  when,
  failed: tests.map((test) => ({
    test,
    form: String(range.form),
    by: 'bend, break or section',
  })),
});

function retest(asked: Asked, tests: string[], when: string): string[] {
  const { rules, system } = asked;
  const found = answer(rules.retest, retestGiven(asked, tests, when));
  if (!found.ok) return found.problems.map(({ text }) => speak(text, system));
  return [String(found.results.needs)];
}

const known = { read: 'read', memory: 'from memory', practice: 'practice', derived: 'worked out' };

/** Of its own source: some reasons name the other code to say where the two part. */
function cites(code: SheetCode, because: readonly Pick<Reason, 'cite'>[]): string[] {
  const own = code === 'AWS D1.1' ? 'aws-d1.1' : 'asme-ix';
  const texts = because.flatMap(({ cite }) => (cite?.source === own ? [citeText(cite)] : []));
  return [...new Set(texts)].map(tidy);
}

const citeText = ({ source, at, known: how }: Citation): string =>
  `${sourceName(source)}${at ? `, ${at}` : ''} (${known[how]})`;
