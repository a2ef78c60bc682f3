/** From a lesson to a calculator's own page, on a phone: the lesson's numbers stand there. */
import { describe, expect, it } from 'vitest';
import { site } from '../site/built-site.ts';
import { visit } from './reader.ts';

const at = (path: string) => site.base + path;
const phone = { width: 360, height: 800 };

describe('a link from a lesson to a calculator', () => {
  it('takes along what was typed into the lesson’s form, and what the lesson gave it', async () => {
    await visit(at('lessons/arc-length-clinic/'), phone, async ({ page, trouble }) => {
      const form = page.locator('section.calculator-box');
      await form.scrollIntoViewIfNeeded();
      await form.locator('[data-alive]').waitFor();
      await form.getByLabel(/^Open-circuit voltage/).fill('80');
      await expect.poll(() => page.url()).toContain('source-line.openCircuitVoltage=80');
      await form.locator('h3 a').click();
      await page.waitForURL('**/calculators/source-line/**');
      await page.locator('[data-alive]').waitFor();
      const field = (label: RegExp) => page.getByLabel(label).first().inputValue();
      expect(await field(/^Open-circuit voltage/)).toBe('80');
      // The lesson's own number, not the opening one of the calculator's page.
      expect(await field(/^Short-circuit current/)).toBe('180');
      expect(trouble).toEqual([]);
    });
  });

  it('takes along the numbers of a worked example, rows and clock times too', async () => {
    await visit(at('lessons/low-hydrogen-electrodes/'), phone, async ({ page, trouble }) => {
      const example = page.locator('.worked-example').filter({ hasText: 'Found under a bench' });
      await example.scrollIntoViewIfNeeded();
      await example.getByRole('button', { name: 'Last step' }).waitFor();
      await example.getByRole('link', { name: 'Try it with your own numbers' }).click();
      await page.waitForURL('**/calculators/electrode-exposure/**');
      await page.locator('[data-alive]').waitFor();
      const typed = await page
        .locator('[data-calculator] input')
        .evaluateAll((boxes) => boxes.map((box) => (box as HTMLInputElement).value));
      expect(typed).toContain('18:15');
      expect(typed).toContain('22:20');
      expect(await page.locator('.answers, [data-calculator]').first().textContent()).toMatch(
        /rebake|past/i,
      );
      expect(trouble).toEqual([]);
    });
  });
});
