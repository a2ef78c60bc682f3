/** The way from a lesson to a calculator's own page, with the numbers that stand in the lesson. */
import type { Typed } from '../../lib/answer.ts';
import type { Calculation } from '../../lib/calculation.ts';
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
  for (const [key, value] of writeState(id, calculation.inputs, numbersOf(box, calculation)))
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
