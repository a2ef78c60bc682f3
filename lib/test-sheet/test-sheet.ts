/** A test-day sheet from what was typed: the coupon, what both codes say of it, and the bend. */
import { answer, type Problem, type Typed } from '../answer.ts';
import type { Output } from '../calculation.ts';
import type { State } from '../page-state.ts';
import { printStated } from '../text/quantity-text.ts';
import { speak } from '../text/say.ts';
import { shown } from '../text/shown.ts';
import { convert, type System, unitFor } from '../units.ts';
import { type CodeColumn, codeColumn } from './code-column.ts';
import { plungerWarning } from './plunger-warning.ts';
import { codes, type SheetCode, type SheetRules } from './sheet-rules.ts';

type Row = Record<string, string>;
export interface SheetRow {
  label: string;
  /** A cell for each column, a sentence each. */
  cells: readonly (readonly string[])[];
  differ: boolean;
}
export interface TestSheet {
  code: SheetCode;
  test: string;
  coupon: readonly { label: string; text: string }[];
  deposits: readonly Row[];
  day: string;
  /** The chosen code first. */
  columns: readonly CodeColumn[];
  rows: readonly SheetRow[];
  /** Sentences of either code that bind the test, and where a strap is bent wrongly; once each. */
  cautions: readonly string[];
  /** What fits badly though it can be worked out, by field. */
  warnings: Readonly<Record<string, string>>;
  /** By field of the form, and of the list as `deposits.1.thickness`. */
  problems: Readonly<Record<string, string>>;
}

const text = (state: State, field: string): string => {
  const value = state[field];
  return typeof value === 'string' ? value : '';
};

/** Nothing is thrown: what cannot be worked out is told by its field or in its column. */
export function testSheet(rules: SheetRules, state: State, system: System): TestSheet {
  const code = codes.find((one) => one === text(state, 'code')) ?? 'AWS D1.1';
  const order = code === codes[0] ? codes : codes.toReversed();
  const problems: Record<string, string> = {};
  const tell = (found: readonly Problem[], as: (field: string) => string = (field) => field) => {
    for (const one of found) problems[as(one.field)] ??= speak(one.text, system);
  };
  const size = sizeOf(rules, state, system, tell);
  const deposits = Array.isArray(state.deposits) ? state.deposits : [];
  const range = {
    test: text(state, 'test'),
    form: text(state, 'form'),
    ...(text(state, 'edition') && { edition: text(state, 'edition') }),
    ...size,
    ...laid(deposits),
  };
  const day = readable(rules, text(state, 'day'), tell);
  const columns = order.map((one) =>
    codeColumn({ rules, code: one, range: { ...range, code: one }, day, system }),
  );
  tell(columns[0]?.problems ?? []);
  const bend = bendLines(rules, code, state, system, tell);
  const labels = [...new Set(columns.flatMap(({ cells }) => [...cells.keys()]))];
  return {
    code,
    test: range.test,
    deposits: whole(deposits, size.thickness),
    day,
    columns,
    rows: labels.map((label) => {
      const cells = columns.map((one) => one.cells.get(label) ?? []);
      const apart = new Set(cells.map((cell) => cell.join('\n'))).size > 1;
      return { label, cells, differ: apart && label !== 'Known from' };
    }),
    cautions: [
      ...new Set(columns.flatMap(({ cautions }) => cautions)),
      ...(bend.warning ? [`${bend.warning} ${bend.basis}`] : []),
    ],
    coupon: [...couponLines(range, state), ...bend.lines],
    warnings: bend.warning ? { plunger: bend.warning } : {},
    problems,
  };
}

/** Typed sizes come before those of the ordered pipe. */
function sizeOf(
  rules: SheetRules,
  state: State,
  system: System,
  tell: (found: readonly Problem[]) => void,
): { thickness: string; outsideDiameter?: string } {
  const thickness = text(state, 'thickness');
  if (text(state, 'form') !== 'pipe') return { thickness };
  const outsideDiameter = text(state, 'outsideDiameter');
  const [nps, schedule] = [text(state, 'nps'), text(state, 'schedule')];
  if (nps === '' || schedule === '') return { thickness, outsideDiameter };
  const found = answer(rules['pipe-size'], { nps, schedule });
  if (!found.ok) {
    tell(found.problems);
    return { thickness, outsideDiameter };
  }
  const printed = (name: string) =>
    `${(found.results[name] as Record<System, number>)[system]} ${system === 'us' ? 'in' : 'mm'}`;
  return {
    thickness: thickness || printed('wall'),
    outsideDiameter: outsideDiameter || printed('outsideDiameter'),
  };
}

/** One filler without a thickness made the whole coupon. */
function laid(rows: readonly Row[]): Typed {
  const [only, ...others] = rows;
  if (only && (others.length > 0 || only.thickness)) return { deposits: rows };
  const { thickness: _, ...rest } = only ?? {};
  return rest;
}

/** As welded: a lone filler without a thickness is as thick as the coupon. */
const whole = (rows: readonly Row[], thickness: string): readonly Row[] =>
  rows.length === 1 ? rows.map((row) => ({ ...row, thickness: row.thickness || thickness })) : rows;

function readable(
  rules: SheetRules,
  day: string,
  tell: (found: readonly Problem[], as: () => string) => void,
): string {
  if (day === '') return '';
  const found = answer(rules.continuity, {
    code: codes[0],
    process: 'SMAW',
    qualified: day,
    on: day,
  });
  if (found.ok) return String(found.values.qualified);
  tell(found.problems.slice(0, 1), () => 'day');
  return '';
}

const couponLines = (range: Typed, state: State) => [
  { label: 'Coupon', text: `${range.form}, ${range.thickness}` },
  ...(range.form === 'pipe'
    ? [
        {
          label: 'Outside diameter',
          text: [
            String(range.outsideDiameter ?? ''),
            text(state, 'nps') && `NPS ${text(state, 'nps')} Sch ${text(state, 'schedule')}`,
          ]
            .filter(Boolean)
            .join(', '),
        },
      ]
    : []),
  { label: 'Position', text: String(range.test) },
  ...(range.edition && range.form === 'pipe'
    ? [{ label: 'Edition of AWS D1.1', text: String(range.edition) }]
    : []),
];

function bendLines(
  rules: SheetRules,
  code: SheetCode,
  state: State,
  system: System,
  tell: (found: readonly Problem[], as: (field: string) => string) => void,
): { lines: { label: string; text: string }[]; warning?: string; basis?: string } {
  if (/F/.test(text(state, 'test'))) return { lines: [] };
  const [thickness, mandrelDiameter] = [text(state, 'strap'), text(state, 'plunger')];
  const found = answer(rules['bend-strain'], { thickness, mandrelDiameter }, system);
  if (!found.ok) {
    tell(found.problems, (field) => (field === 'thickness' ? 'strap' : 'plunger'));
    return { lines: [] };
  }
  const unit = unitFor('in', system);
  const diameter = Number(found.values.mandrelDiameter);
  const { strain } = rules['bend-strain'].outputs as Record<string, Output>;
  return {
    lines: [
      { label: 'Strap', text: thickness },
      {
        label: 'Bend radius',
        text: printStated(Number((convert(diameter, 'in', unit) / 2).toFixed(3)), unit),
      },
      { label: 'Strain of its skin', text: shown(strain as Output, found.results.strain, system) },
    ],
    ...plungerWarning(code, thickness, Number(found.values.thickness), diameter, system),
  };
}
