import type { Given } from '../../lib/answer.ts';
import type { Input, ListInput } from '../../lib/calculation.ts';
import { printStated } from '../../lib/text/quantity-text.ts';
import { convert, type System, unitFor, unitSign } from '../../lib/units.ts';

interface Text {
  us: string;
  metric: string;
}

/** A given value as each reader sees it: as typed in its own system, converted in the other. */
export function givenText(input: Input, given: Given | readonly Record<string, Given>[]): Text {
  if (isRows(given)) return rowsText(input as ListInput, given);
  const { text, value, unit } = given;
  if (value === undefined || unit === undefined || isClock(text)) return both(text);
  const inSystem = (system: System) => {
    const to = unitFor(unit, system);
    return printStated(convert(value, unit, to), to);
  };
  return 'choices' in input || unitSign(unit) === ''
    ? both(text)
    : { us: inSystem('us'), metric: inSystem('metric') };
}

/** A clock time says more than its hours do. */
const isClock = (text: string): boolean => /^\d{1,2}:\d\d$/.test(text);

const isRows = (given: object): given is readonly Record<string, Given>[] => Array.isArray(given);

/** Cells with a comma between them, rows with a semicolon; a choice speaks for itself. */
function rowsText({ list }: ListInput, rows: readonly Record<string, Given>[]): Text {
  const cells = rows.map((row) =>
    Object.entries(list)
      .filter(([name]) => row[name] !== undefined)
      .map(([name, input]) => ({ input, text: givenText(input, row[name] as Given) })),
  );
  const inSystem = (system: System) =>
    cells
      .map((row) => row.map(({ input, text }) => `${labelOf(input)}${text[system]}`).join(', '))
      .join('; ');
  return { us: inSystem('us'), metric: inSystem('metric') };
}

const labelOf = (input: Input): string =>
  'choices' in input ? '' : `${input.label.charAt(0).toLowerCase()}${input.label.slice(1)} `;

const both = (text: string): Text => ({ us: text, metric: text });
