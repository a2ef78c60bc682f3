/**
 * A booth's link works an example again from what its page shows. So what is read back from each
 * page must give the answers that stand there.
 */
import { describe, expect, it } from 'vitest';
import {
  calculationOf,
  givenOf,
  type Line,
  wantedOf,
} from '../../components/Booth/read-example.ts';
import { answerText } from '../../components/WorkedExample/answer-text.ts';
import { answer } from '../../lib/answer.ts';
import type { Output } from '../../lib/calculation.ts';
import { loadCalculation } from '../../lib/calculations.ts';
import { attribute, site } from './built-site.ts';

const pages = site.pages.filter(({ html }) => html.includes('worked-example'));
const tidy = (text = '') =>
  text
    .replace(/&amp;/g, '&')
    .replace(/&nbsp;/g, '\u00a0')
    .trim();

describe('worked examples', () => {
  it('stand on many pages', () => expect(pages.length).toBeGreaterThan(20));
  it.each(pages.map((page) => [page.path, page] as const))(
    '%s gives back its examples',
    async (_, { document }) => {
      for (const box of document.querySelectorAll('.worked-example')) {
        const lines = (list: string): Line[] =>
          box.querySelectorAll(`.${list} > div`).map((row) => {
            const cell = row.querySelector('dd');
            const text = (system: string) =>
              tidy((cell?.querySelector(`.${system}`) ?? cell)?.textContent);
            return {
              label: tidy(row.querySelector('dt')?.textContent),
              shown: { us: text('us'), metric: text('metric') },
            };
          });
        const href = box
          .querySelectorAll('a')
          .map((link) => attribute(link, 'href') ?? '')
          .at(-1);
        const id = calculationOf(href ?? '');
        expect(id).toBeDefined();
        const calculation = await loadCalculation(id as string);
        const given = givenOf(calculation, lines('givens'));
        if (!given) continue;
        const answered = answer(calculation, given);
        if (!answered.ok) throw new Error(`${id}: ${JSON.stringify(answered.problems)}`);
        const outputs: Record<string, Output> = calculation.outputs;
        const answers = lines('answers');
        const wanted = wantedOf(
          calculation,
          answers.map(({ label }) => label),
        );
        expect(wanted, `${id}: outputs told apart by their labels`).toHaveLength(answers.length);
        for (const name of wanted) {
          const output = outputs[name] as Output;
          const there = answers.find(({ label }) => label === output.label)?.shown;
          expect(answerText(output, name, answered, 'us'), `${id}: ${name}`).toBe(there?.us);
          // A page opens metric forms with rounded defaults (356 mm for 14 in), so the last digit
          // of a metric answer may differ.
          const metric = answerText(output, name, answered, 'metric');
          const [here, on] = [metric, there?.metric ?? ''].map(Number.parseFloat) as [
            number,
            number,
          ];
          if (metric !== there?.metric) expect(Math.abs(here / on - 1)).toBeLessThan(0.02);
        }
      }
    },
  );
});
