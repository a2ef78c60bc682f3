/** The form's state in the address of the page. */
import type { Inputs } from '../../lib/calculation.ts';
import { readState, writeState } from '../../lib/page-state.ts';
import { type Entries, entriesOf, stateOf } from './entries.ts';

export function readAddress(name: string, inputs: Inputs): { entries: Entries; strays: string[] } {
  const { state, strays } = readState(name, inputs, new URLSearchParams(location.search));
  return { entries: entriesOf(inputs, state), strays };
}

/** The address with this form's state, other parameters kept. */
export function addressOf(name: string, inputs: Inputs, entries: Entries): string {
  const address = new URL(location.href);
  for (const key of [...address.searchParams.keys()])
    if (key.startsWith(`${name}.`)) address.searchParams.delete(key);
  for (const [key, value] of writeState(name, inputs, stateOf(inputs, entries)))
    address.searchParams.append(key, value);
  return address.href;
}

const timers = new Map<string, ReturnType<typeof setTimeout>>();

/** Writes the state 300 ms after the last key: on every key it would cost more than the sums. */
export function writeAddress(name: string, inputs: Inputs, entries: Entries): void {
  clearTimeout(timers.get(name));
  timers.set(
    name,
    setTimeout(() => {
      try {
        history.replaceState(history.state, '', addressOf(name, inputs, entries));
      } catch {
        // Some browsers limit how often; the next key writes it.
      }
    }, 300),
  );
}
