/** What stands in the page before the form comes to life, and what it fills from outside. */
import type { Answered } from '../../lib/answer.ts';
import type { Calculation, Inputs } from '../../lib/calculation.ts';
import { slotTexts } from '../../lib/slot-texts.ts';
import type { System } from '../../lib/units.ts';
import type { Entries } from './entries.ts';

export const currentSystem = (): System =>
  document.documentElement.dataset.units === 'metric' ? 'metric' : 'us';

/** Whatever the reader typed or chose before the script came. */
export function takeOverTyped(
  form: HTMLFormElement | null,
  name: string,
  inputs: Inputs,
  system: System,
): Entries {
  const found: Entries = {};
  for (const field of Object.keys(inputs)) {
    const box = form?.querySelector<HTMLInputElement | HTMLSelectElement>(
      `#${CSS.escape(`${name}-${field}`)}`,
    );
    if (!box) continue;
    const { us, metric, opened } = box.dataset;
    if (box.value !== us && box.value !== metric && box.value !== opened)
      found[field] = { text: box.value, system };
  }
  return found;
}

/** Puts the values into the slots of the lines that were typeset at build. */
export function fillLines(
  form: HTMLFormElement | null,
  calculation: Calculation,
  by: Record<System, Answered>,
): void {
  if (!form || calculation.kind !== 'formula') return;
  for (const system of ['us', 'metric'] as const) {
    const answered = by[system];
    if (!answered.ok) continue;
    const texts = slotTexts(calculation, answered, system);
    for (const line of form.querySelectorAll<HTMLElement>('[data-line]'))
      for (const slot of line.querySelectorAll<HTMLElement>(`mtext.${system}[data-in]`))
        slot.textContent = texts[line.dataset.line ?? '']?.[slot.dataset.in ?? ''] ?? '';
  }
}
