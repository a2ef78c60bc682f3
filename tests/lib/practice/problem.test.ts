/** Every problem over many sets: it can be solved, has one answer, reads as a sentence, comes again. */
import { describe, expect, it } from 'vitest';
import { calculationIds } from '../../../content/commands/calculation-ids.ts';
import { loadCalculation } from '../../../lib/calculations.ts';
import { judge } from '../../../lib/practice/judge.ts';
import { canBePractised, makeProblem } from '../../../lib/practice/problem.ts';
import { speak } from '../../../lib/text/say.ts';
import { shown } from '../../../lib/text/shown.ts';

const all = await Promise.all(
  calculationIds().map(async (id) => ({ id, calculation: await loadCalculation(id) })),
);

describe.each(all.filter(({ calculation }) => canBePractised(calculation)))(
  '$id',
  ({ id, calculation }) => {
    it('makes solvable problems over two hundred sets, in both systems', () => {
      for (let set = 1; set <= 200; set++)
        for (const system of ['us', 'metric'] as const) {
          const problem = makeProblem(id, calculation, set, set % 5, system);
          const { want, typed, found, text, output } = problem;
          const { results } = found;
          const printed = shown(output, results[want], system);
          expect(judge({ calculation, typed, results, want, system }, printed).right).toBe(true);
          expect(speak(text, system)).toMatch(/^[A-Z].*\?$/s);
        }
    });

    it('makes the same problem from the same numbers', () => {
      const once = makeProblem(id, calculation, 4021, 2, 'us');
      expect(makeProblem(id, calculation, 4021, 2, 'us').text).toBe(once.text);
    });
  },
);

it('asks about currents and speeds that a booth of this course meets (common practice, no source)', async () => {
  const calculation = await loadCalculation('heat-input');
  for (let set = 1; set <= 300; set++) {
    const { typed } = makeProblem('heat-input', calculation, set, set % 5, 'us');
    const current = Number.parseFloat(String(typed.current));
    const speed = Number.parseFloat(String(typed.travelSpeed));
    expect(current).toBeGreaterThanOrEqual(70);
    expect(current).toBeLessThanOrEqual(200);
    expect(speed).toBeGreaterThanOrEqual(3);
    expect(speed).toBeLessThanOrEqual(10);
  }
});
