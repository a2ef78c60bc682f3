/** Puts values into the slots of the lines that were typeset at build. Loaded for formulas only. */
import type { Answered } from '../../lib/answer.ts';
import type { Formula } from '../../lib/calculation.ts';
import { slotTexts } from '../../lib/text/slot-texts.ts';
import type { System } from '../../lib/units.ts';

export function fillLines(
  form: HTMLFormElement | null,
  formula: Formula,
  by: Record<System, Answered>,
): void {
  if (!form) return;
  for (const system of ['us', 'metric'] as const) {
    const answered = by[system];
    if (!answered.ok) continue;
    const texts = slotTexts(formula, answered, system);
    for (const line of form.querySelectorAll<HTMLElement>('[data-line]'))
      fillLine(line, texts[line.dataset.line ?? ''] ?? {}, system);
  }
}

/** Fills the slots of one line for the readers of one system. */
export function fillLine(line: HTMLElement, texts: Record<string, string>, system: System): void {
  for (const slot of line.querySelectorAll<HTMLElement>(`mtext.${system}[data-in]`))
    slot.textContent = texts[slot.dataset.in ?? ''] ?? '';
}

export type FillLines = typeof fillLines;
