/**
 * Takes a worked example back step by step. What the page printed stays in it, hidden, and comes
 * back with "Show it whole".
 */
import { h, render } from 'preact';
import type { Output } from '../../lib/calculation.ts';
import { loadCalculation } from '../../lib/calculations.ts';
import { canBeAsked } from '../../lib/practice/can-be-asked.ts';
import { calculationOf, wantedOf } from '../Booth/read-example.ts';
import { exampleGiven } from './example-given.ts';
import type { Way } from './fade-row.ts';
import { linesOf } from './lines-of.ts';
import { neededOutputs } from './needed-outputs.ts';
import OpenSteps from './OpenSteps.tsx';

const kept = '.worked, figure, .reasons, .answers';

export async function fade(example: HTMLElement, row: HTMLElement, way: Way): Promise<void> {
  const link = example.querySelector<HTMLAnchorElement>('p:last-child > a');
  const calculation = await loadCalculation(calculationOf(link?.pathname ?? '') ?? '');
  const { outputs } = calculation;
  const wanted = wantedOf(
    calculation,
    linesOf(example, 'answers').map(({ label }) => label),
  );
  const given = exampleGiven(example, calculation);
  const steps =
    calculation.kind === 'formula'
      ? neededOutputs(calculation, wanted)
      : wanted.filter((name) => canBeAsked(outputs[name] as Output));
  const top = row.getBoundingClientRect().top;
  const host = hostOf(example, row);
  for (const part of example.children) {
    if (part === host || part === row || part.matches('h3, :last-child')) continue;
    const solves = part.matches(kept) || part.querySelector(kept) !== null;
    const hide = way === 'fresh' || (way !== 'whole' && solves);
    // A style of the page may show what is only marked as hidden.
    (part as HTMLElement).style.display = hide ? 'none' : '';
  }
  render(
    way === 'whole'
      ? null
      : h(OpenSteps, {
          key: `${way}-${Date.now()}`,
          calculation,
          given,
          steps,
          way,
          lines: [...example.querySelectorAll<HTMLElement>(':scope > .worked')],
        }),
    host,
  );
  if (way === 'whole') scrollBy(0, row.getBoundingClientRect().top - top);
  else host.querySelector<HTMLElement>('input, select')?.focus();
}

const hosts = new WeakMap<HTMLElement, HTMLElement>();
function hostOf(example: HTMLElement, row: HTMLElement): HTMLElement {
  const host = hosts.get(example) ?? document.createElement('div');
  if (!hosts.has(example)) row.before(host);
  hosts.set(example, host);
  return host;
}
