/** The numbers to hit on a booth sheet, computed with what the booth gives. */
import { type ComponentChild, h } from 'preact';
import { answer } from '../../lib/answer.ts';
import type { Booth } from '../../lib/booth/booth-link.ts';
import type { SheetNumbers } from '../../lib/booth/exercise-sheet.ts';
import { fitBooth } from '../../lib/booth/fit-booth.ts';
import type { Output } from '../../lib/calculation.ts';
import { loadCalculation } from '../../lib/calculations.ts';
import type { System } from '../../lib/units.ts';
import { answerText } from '../WorkedExample/answer-text.ts';

export interface Worked {
  rows: { label: string; shown: Record<System, string> }[];
  drawing: ComponentChild;
  /** Sentences on what could not be computed with the booth's numbers. */
  problems: string[];
}

export async function workNumbers(
  all: readonly SheetNumbers[],
  numbers: Booth['numbers'],
): Promise<Worked> {
  const worked: Worked = { rows: [], drawing: undefined, problems: [] };
  for (const { of, given, want, drawing } of all) {
    const calculation = await loadCalculation(of);
    const answered = answer(calculation, {
      ...given,
      ...fitBooth(of, calculation.inputs, numbers, given),
    });
    if (!answered.ok) {
      const [problem] = answered.problems;
      worked.problems.push(`${calculation.title}: ${problem?.text ?? 'cannot be computed'}`);
      continue;
    }
    const outputs: Record<string, Output> = calculation.outputs;
    for (const name of want) {
      const output = outputs[name];
      if (!output) continue;
      const inSystem = (system: System) => answerText(output, name, answered, system);
      worked.rows.push({
        label: output.label,
        shown: { us: inSystem('us'), metric: inSystem('metric') },
      });
    }
    if (drawing && !worked.drawing) {
      const { liveDrawing } = await import('../Drawing/live-drawing.ts');
      worked.drawing = h(await liveDrawing(of), { by: { us: answered, metric: answered } });
    }
  }
  return worked;
}
