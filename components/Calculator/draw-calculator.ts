/** Draws the form at build, its typeset lines filled with the opening values of both systems. */
import { type ComponentType, h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import type { Typed } from '../../lib/answer.ts';
import type { Calculation, Input } from '../../lib/calculation.ts';
import { type DrawingProps, ofBoth } from '../Drawing/DrawnBoth.tsx';
import { filledLines } from '../Formula/filled-lines.ts';
import FieldHelp from '../QuantityField/FieldHelp.tsx';
import FieldLabel from '../QuantityField/FieldLabel.tsx';
import type { KeptTexts } from '../QuantityField/Kept.tsx';
import { answerKnown } from './answer-known.ts';
import CalculatorForm from './CalculatorForm.tsx';
import { listParts } from './list-parts.ts';

const drawings = import.meta.glob<ComponentType<DrawingProps>>('../drawings/*.tsx', {
  import: 'default',
});

export const loadDrawing = async (id: string): Promise<ComponentType<DrawingProps> | undefined> =>
  drawings[`../drawings/${id}.tsx`]?.();

export async function drawCalculator(it: {
  id: string;
  name: string;
  calculation: Calculation;
  given: Typed;
  page: string;
}): Promise<{ html: string; hasDrawing: boolean }> {
  const { id, name, calculation, given, page } = it;
  const by = answerKnown(id, calculation, given, page);
  const lines = calculation.kind === 'formula' ? filledLines(calculation, by) : {};
  const drawing = await loadDrawing(id);
  const Drawing = drawing && ofBoth(drawing);
  const texts = keptTexts(name, calculation);
  const html = renderToString(
    h(CalculatorForm, { name, calculation, given, lines, texts, Drawing, lists: listParts }),
  );
  return { html, hasDrawing: Drawing !== undefined };
}

function keptTexts(name: string, { inputs }: Calculation): KeptTexts {
  return Object.fromEntries(
    Object.entries<Input>(inputs).map(([field, input]) => [
      field,
      {
        label: renderToString(h(FieldLabel, { input })),
        help: renderToString(h(FieldHelp, { id: `${name}-${field}`, input })),
      },
    ]),
  );
}
