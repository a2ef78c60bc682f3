import { h, hydrate } from 'preact';
import { loadCalculation } from '../../lib/calculations.ts';
import CalculatorForm from './CalculatorForm.tsx';
import { hasLists } from './has-lists.ts';

/** Hydrates one calculator with its calculation and its drawing, each from a file of its own. */
export async function live(box: HTMLElement): Promise<void> {
  const { calculator = '', name = '', given = '{}', drawing } = box.dataset;
  const [calculation, Drawing] = await Promise.all([
    loadCalculation(calculator),
    drawing ? import(`../drawings/${drawing}.tsx`).then((module) => module.default) : undefined,
  ]);
  const lists = hasLists(calculation) ? (await import('./list-parts.ts')).listParts : undefined;
  const props = { name, calculation, given: JSON.parse(given), Drawing, lists };
  hydrate(h(CalculatorForm, props), box);
  box.dataset.alive = '';
}
