/** What one code says of a test, in words for a sheet. Every rule is asked for through answer(). */
import { answer, type Problem, type Typed } from '../answer.ts';
import type { ListOutput, Output } from '../calculation.ts';
import { cutPlace } from '../tables/cut-places.ts';
import type { Form } from '../tables/test-positions.ts';
import { ruleOf } from '../text/inches.ts';
import { printStated } from '../text/quantity-text.ts';
import { speak } from '../text/say.ts';
import { nothing, shown, shownCell } from '../text/shown.ts';
import type { System } from '../units.ts';
import { codeCites } from './code-cites.ts';
import { type Cuts, cutLayout } from './cut-layout.ts';
import { counts, insteadOf, type NamedSpecimen, namedSpecimens } from './named-specimens.ts';
import type { SheetCode, SheetRules } from './sheet-rules.ts';

export interface CodeColumn {
  code: SheetCode;
  /** Why the test has no answer under this code. */
  problems: readonly Problem[];
  /** By label, in the order of the sheet. */
  cells: ReadonlyMap<string, readonly string[]>;
  specimens: readonly NamedSpecimen[];
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
  const specimens = namedSpecimens(rules, range, found, tests);
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
      codeCites(code, [...found.because, ...others, cutPlace(code, form, tests[0] ?? '')]),
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
