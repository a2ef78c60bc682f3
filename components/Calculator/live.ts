import { h, hydrate } from 'preact';
import { loadCalculation } from '../../lib/calculations.ts';
import CalculatorForm from './CalculatorForm.tsx';

/** Hydrates one calculator with its calculation and its drawing, each from a file of its own. */
export async function live(box: HTMLElement): Promise<void> {
  const { calculator = '', name = '', given = '{}', drawing } = box.dataset;
  const [calculation, Drawing] = await Promise.all([
    loadCalculation(calculator),
    drawing ? import(`../drawings/${drawing}.tsx`).then((module) => module.default) : undefined,
  ]);
  hydrate(h(CalculatorForm, { name, calculation, given: JSON.parse(given), Drawing }), box);
  box.dataset.alive = '';
}
