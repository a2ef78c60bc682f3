import { h, hydrate } from 'preact';
import type { Calculation } from '../../lib/calculation.ts';
import CalculatorForm from './CalculatorForm.tsx';
import { hasLists } from './has-lists.ts';

/**
 * Hydrates one calculator with its drawing and what its kind needs, each from a file of its own, so
 * that a page pays for nothing that it does not show.
 */
export async function live(box: HTMLElement, calculation: Calculation): Promise<void> {
  const { calculator = '', name = '', given = '{}', drawing } = box.dataset;
  const [Drawing, fill, lists, booth] = await Promise.all([
    drawing
      ? import('../Drawing/live-drawing.ts').then(({ liveDrawing }) => liveDrawing(drawing))
      : undefined,
    calculation.kind === 'formula'
      ? import('./formula-lines.ts').then(({ fillLines }) => fillLines)
      : undefined,
    hasLists(calculation)
      ? import('./list-parts.ts').then(({ listParts }) => listParts)
      : undefined,
    location.search.includes('booth.')
      ? import('../Booth/booth-given.ts').then(({ boothGiven }) =>
          boothGiven(calculator, calculation.inputs),
        )
      : undefined,
  ]);
  const props = { name, calculation, given: JSON.parse(given), Drawing, fill, lists, booth };
  hydrate(h(CalculatorForm, props), box);
  box.dataset.alive = '';
}
