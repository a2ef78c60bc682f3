/** Every problem over many sets: it can be solved, has one answer, reads as a sentence, comes again. */
import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import { judge } from '../../../lib/practice/judge.ts';
import { loadPracticed } from '../../../lib/practice/load-practiced.ts';
import { makeProblem } from '../../../lib/practice/problem.ts';
import { practiced } from '../../../lib/practice/scenes.ts';
import { speak } from '../../../lib/text/say.ts';
import { shown } from '../../../lib/text/shown.ts';

const all = await Promise.all(practiced.map(loadPracticed));

describe.each(all)('$id', (one) => {
  const { calculation } = one;

  it('makes solvable problems over two hundred sets, in both systems', async () => {
    for (let set = 1; set <= 200; set++)
      for (const system of ['us', 'metric'] as const) {
        const problem = makeProblem(one, set, set % 5, system);
        const { want, typed, found, text, output } = problem;
        const { results } = found;
        const printed = shown(output, results[want], system);
        expect((await judge({ calculation, typed, results, want, system }, printed)).right).toBe(
          true,
        );
        expect(answer(calculation, typed).ok).toBe(true);
        expect(printed).not.toMatch(/not complete|not checked|nothing was/);
        const said = speak(text, system);
        expect(said).toMatch(/^[A-Z].*\?$/s);
        // A value that was left out, a bare brace, a double space or stop, "a 8 mm".
        expect(said).not.toMatch(/[{}]|undefined|NaN| {2}|\.\.|;\.| ,|\ban? (8|11|18|80)\b/);
      }
  });

  it('asks in the same words in both systems, and never for a measure of nothing', () => {
    const words = (text: string) => text.replaceAll(/\{[^}]*\}/g, '#');
    for (let set = 1; set <= 40; set++) {
      const us = makeProblem(one, set, 1, 'us');
      const metric = makeProblem(one, set, 1, 'metric');
      expect(words(metric.text)).toBe(words(us.text));
      expect(metric.want).toBe(us.want);
      const value = us.found.results[us.want];
      const isCount = 'unit' in us.output && us.output.unit === '1';
      if (typeof value === 'number' && !isCount) expect(value).toBeGreaterThan(0);
    }
  });

  it('comes in several forms', () => {
    const forms = new Set<string>();
    for (let set = 1; set <= 60; set++)
      forms.add(makeProblem(one, set, 0, 'us').text.replaceAll(/\{[^}]*\}|\d/g, '#'));
    expect(forms.size).toBeGreaterThan(1);
  });

  it('makes the same problem from the same numbers', () => {
    const once = makeProblem(one, 4021, 2, 'us');
    expect(makeProblem(one, 4021, 2, 'us').text).toBe(once.text);
  });
});

it('asks about currents and speeds that a booth of this course meets (common practice, no source)', async () => {
  const heat = await loadPracticed('heat-input');
  for (let set = 1; set <= 300; set++) {
    const { typed } = makeProblem(heat, set, set % 5, 'us');
    const current = Number.parseFloat(String(typed.current));
    const speed = Number.parseFloat(String(typed.travelSpeed));
    expect(current).toBeGreaterThanOrEqual(70);
    expect(current).toBeLessThanOrEqual(200);
    expect(speed).toBeGreaterThanOrEqual(3);
    expect(speed).toBeLessThanOrEqual(10);
  }
});
