/** The way from a lesson to a calculator's own page, with the numbers that stand in the lesson. */
import type { Typed } from '../../lib/answer.ts';
import type { Calculation, Input } from '../../lib/calculation.ts';
import { loadCalculation } from '../../lib/calculations.ts';
import { readState, type State, writeState } from '../../lib/page-state.ts';
import { calculationOf } from '../Booth/read-example.ts';
import { exampleGiven } from '../WorkedExample/example-given.ts';

/** Follows a link that was pressed; without the numbers where they cannot be had. */
export async function takeAlong(event: MouseEvent, link: HTMLAnchorElement, box: HTMLElement) {
  const aside = event.ctrlKey || event.metaKey || event.shiftKey;
  const address = await withNumbers(link, box).catch(() => link.href);
  if (aside) open(address);
  else location.assign(address);
}

async function withNumbers(link: HTMLAnchorElement, box: HTMLElement): Promise<string> {
  const id = calculationOf(link.pathname) ?? '';
  const calculation = await loadCalculation(id);
  const address = new URL(link.href);
  const state = Object.entries(numbersOf(box, calculation)).map(([name, value]) => {
    const input = calculation.inputs[name];
    return [name, input && typeof value === 'string' ? besideUnit(input, value) : value] as const;
  });
  for (const [key, value] of writeState(id, calculation.inputs, Object.fromEntries(state)))
    address.searchParams.append(key, value);
  return address.href;
}

/** Of a form: what the page gives, and over it what was typed. Of a worked example: what is given. */
function numbersOf(box: HTMLElement, calculation: Calculation): State {
  const { name, given } = box.dataset;
  if (!name) return textOf(exampleGiven(box, calculation));
  const typed = new URLSearchParams(location.search);
  return {
    ...textOf(JSON.parse(given ?? '{}')),
    ...readState(name, calculation.inputs, typed).state,
  };
}

/** A value as its box would hold it, a list as rows of such values. */
const textOf = (given: Typed): State =>
  Object.fromEntries(
    Object.entries(given).flatMap(([name, value]): [string, State[string]][] => {
      if (value === undefined) return [];
      if (typeof value !== 'object') return [[name, String(value)]];
      const row = (cells: (typeof value)[number]) =>
        Object.fromEntries(Object.entries(cells).map(([cell, text]) => [cell, String(text)]));
      return [[name, value.map(row)]];
    }),
  );

/** Without the unit that stands beside the box: `3/8 in` is `3/8` there. */
function besideUnit(input: Input, text: string): string {
  const unit = 'unit' in input ? input.unit : 'printed' in input ? input.printed.us : undefined;
  const sign = unit === 'deg' ? '°' : ` ${unit}`;
  const plain = text.replaceAll('\u00a0', ' ');
  return plain.endsWith(sign) ? plain.slice(0, -sign.length) : plain;
}
