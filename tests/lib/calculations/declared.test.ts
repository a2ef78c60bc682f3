/** What the descriptions say with one word: a mark that stands is true, and a size is rounded to the safe side. */
import { expect, it } from 'vitest';
import { calculationIds } from '../../../content/commands/calculation-ids.ts';
import type { Output } from '../../../lib/calculation.ts';
import { loadCalculation } from '../../../lib/calculations.ts';

const all = await Promise.all(
  calculationIds().map(async (id) => ({ id, calculation: await loadCalculation(id) })),
);

/** Paths of all that is false, such as `outputs.state.text`. */
const unset = (it: unknown, path: string): string[] =>
  it === false
    ? [path]
    : typeof it === 'object' && it !== null
      ? Object.entries(it).flatMap(([name, part]) => unset(part, `${path}.${name}`))
      : [];

it('marks that stand are true: what is not so is left out', () => {
  expect(all.flatMap(({ id, calculation }) => unset(calculation, id))).toEqual([]);
});

it('only what engineers design by is kept for them, and only fits to measurements are empirical', () => {
  const marked = (mark: string) =>
    all.flatMap(({ id, calculation }) => (mark in calculation ? [id] : []));
  expect(marked('forEngineers')).toEqual([
    'cooling-time',
    'fillet-strength',
    'preheat-cet',
    'transverse-shrinkage',
  ]);
  expect(marked('empirical')).toEqual(['carbon-equivalent', 'preheat-cet']);
});

// Common practice, no source: a leg to lay is rounded up, a size that counts down, a setting to the nearest.
it('rounds a leg to lay up, a size that counts down, and what is only set to the nearest step', () => {
  const rounded = all.flatMap(({ id, calculation }) =>
    Object.entries<Output>(calculation.outputs).flatMap(([name, output]) =>
      'round' in output && output.round
        ? [`${id} ${name}: ${output.round.way}, ${output.round.to}`]
        : [],
    ),
  );
  expect(rounded.sort()).toEqual([
    'bead-from-electrode filletLeg: nearest, 1/32 in|0.5 mm',
    'bead-overlap pitch: nearest, 1/32 in|0.5 mm',
    'fillet-leg leg: up, 1/16 in|0.5 mm',
    'fillet-profile effectiveSize: down, 1/16 in|0.5 mm',
    'leg-from-rod leg: nearest, 1/32 in|0.5 mm',
    'padding-plan pitch: nearest, 1/32 in|0.5 mm',
    'run-out-length runOut: nearest, 1/4 in|5 mm',
  ]);
});
