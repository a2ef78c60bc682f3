/** What stands in the page before the form comes to life. */
import type { Inputs } from '../../lib/calculation.ts';
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
