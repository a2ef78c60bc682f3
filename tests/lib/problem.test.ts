/** Every problem over many sets: it can be solved, has one answer, reads as a sentence, comes again. */
import { describe, expect, it } from 'vitest';
import { calculationIds } from '../../content/commands/calculation-ids.ts';
import { loadCalculation } from '../../lib/calculations.ts';
import { canBePractised, makeProblem } from '../../lib/problem.ts';
import { speak } from '../../lib/say.ts';
import { judge } from '../../lib/slips.ts';

const all = await Promise.all(
  calculationIds().map(async (id) => ({ id, calculation: await loadCalculation(id) })),
);

describe.each(all.filter(({ calculation }) => canBePractised(calculation)))(
  '$id',
  ({ id, calculation }) => {
    it('makes solvable problems over two hundred sets, in both systems', () => {
      for (let set = 1; set <= 200; set++)
        for (const system of ['us', 'metric'] as const) {
          const { want, found, text } = makeProblem(id, calculation, set, set % 5, system);
          const result = found.results[want];
          if (typeof result === 'number' && result !== 0)
            expect(judge(result, result)).toEqual({ right: true });
          expect(speak(text, system)).toMatch(/^[A-Z].*\?$/s);
        }
    });

    it('makes the same problem from the same numbers', () => {
      const once = makeProblem(id, calculation, 4021, 2, 'us');
      expect(makeProblem(id, calculation, 4021, 2, 'us').text).toBe(once.text);
    });
  },
);

describe('judge', () => {
  it.each<[string, number, string]>([
    ['inches for millimeters', 25.4, 'inches and millimeters'],
    ['a lost kilo', 1000, 'kilo'],
    ['minutes for seconds', 1 / 60, 'seconds and minutes'],
    ['leg for throat', Math.SQRT2, 'leg'],
    ['radius for diameter', 0.5, 'radius'],
    ['no efficiency', 1.25, 'efficiency'],
    ['rounding on the way', 1.04, 'digits'],
    ['anything else', 3.3, 'hint'],
  ])('names %s', (_, factor, word) => {
    const judged = judge(7.3 * factor, 7.3);
    expect(judged.right ? '' : judged.text).toContain(word);
  });
  it('takes an answer within two in a hundred', () => {
    expect(judge(102, 100).right).toBe(true);
    expect(judge(102.1, 100).right).toBe(false);
  });
});
