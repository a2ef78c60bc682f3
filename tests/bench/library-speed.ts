/** How fast the library is: simple evaluations a second, and milliseconds for a plan. */

import { answer } from '../../lib/answer.ts';
import heatInput from '../../lib/calculations/heat-input.ts';
import { loadCalculation } from '../../lib/calculations.ts';

function perSecond(work: (n: number) => number, count: number): number {
  let sum = work(1000);
  const start = performance.now();
  sum += work(count);
  const seconds = (performance.now() - start) / 1000;
  if (!Number.isFinite(sum)) throw new Error('a result is not finite');
  return count / seconds;
}

const evaluations = perSecond((count) => {
  let sum = 0;
  for (let n = 0; n < count; n++)
    sum += heatInput.compute({
      voltage: 22,
      current: 100 + (n & 63),
      travelSpeed: 6,
      efficiency: 0.8,
    }).heatInput;
  return sum;
}, 2e7);
console.log(`heat-input: ${(evaluations / 1e6).toFixed(0)} million evaluations a second`);

for (const id of [
  'padding-plan',
  'fillet-passes',
  'groove-passes',
  'cut-plan',
  'class-materials',
]) {
  const calculation = await loadCalculation(id);
  const typed = Object.fromEntries(
    Object.entries(calculation.inputs)
      .filter(([, input]) => !input.optional)
      .map(([name, { example }]) => [
        name,
        typeof example === 'object' && 'us' in example ? example.us : example,
      ]),
  );
  const runs = 50;
  const start = performance.now();
  for (let n = 0; n < runs; n++) answer(calculation, typed, 'us');
  console.log(`${id}: ${((performance.now() - start) / runs).toFixed(2)} ms, typed text to answer`);
}
