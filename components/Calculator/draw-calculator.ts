/** Draws the form at build, its typeset lines filled with the opening values of both systems. */
import { type ComponentType, h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import type { Typed } from '../../lib/answer.ts';
import type { Calculation } from '../../lib/calculation.ts';
import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import { filledLines } from '../Formula/filled-lines.ts';
import { answerKnown } from './answer-known.ts';
import CalculatorForm from './CalculatorForm.tsx';

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
  const Drawing = await loadDrawing(id);
  const html = renderToString(h(CalculatorForm, { name, calculation, given, lines, Drawing }));
  return { html, hasDrawing: Drawing !== undefined };
}
