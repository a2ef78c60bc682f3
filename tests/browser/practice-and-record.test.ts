/** The learner's way: an example with steps left open, slips named, hints one by one. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { site } from '../site/built-site.ts';
import { visit } from './reader.ts';

const lesson = `${site.base}lessons/flat-bead/`;

/** The example of heat: 22 V, 125 A, 6 in/min, so 27.5 kJ/in and 22 kJ/in. */
async function heatExample(page: Page) {
  const example = page
    .locator('.worked-example')
    .filter({ hasText: 'How much heat that bead got' });
  await example.scrollIntoViewIfNeeded();
  await example.getByRole('button', { name: 'Last step' }).waitFor();
  return example;
}

describe('a worked example', () => {
  it('leaves its last step open, names the slip, gives way hint by hint, and comes back whole', async () => {
    await visit(lesson, {}, async ({ page, trouble }) => {
      const example = await heatExample(page);
      const whole = await example.locator('.answers').textContent();
      await example.getByRole('button', { name: 'Last step' }).click();
      const field = example.getByRole('textbox');
      await expect.poll(() => field.count()).toBe(1);
      await expect.poll(() => field.evaluate((box) => box === document.activeElement)).toBe(true);
      expect(await example.locator('.answers').isVisible()).toBe(false);
      await field.fill('27.5');
      await field.press('Enter');
      const said = example.getByRole('status');
      await expect.poll(() => said.textContent()).toMatch(/arc energy/);
      expect(await field.getAttribute('aria-describedby')).toBe(await said.getAttribute('id'));
      await field.fill('22 kJ/in');
      await field.press('Enter');
      await expect.poll(() => said.textContent()).toMatch(/^Right/);
      await example.getByRole('button', { name: 'Show it whole' }).click();
      await example.locator('.answers').waitFor();
      expect(await example.locator('.answers').textContent()).toBe(whole);
      expect(await example.getByRole('textbox').count()).toBe(0);
      expect(trouble).toEqual([]);
    });
  });

  it('leaves two steps open and shows one when asked for it', async () => {
    await visit(lesson, { width: 360 }, async ({ page, trouble }) => {
      const example = await heatExample(page);
      await example.getByRole('button', { name: 'Two steps' }).click();
      await expect.poll(() => example.getByRole('textbox').count()).toBe(2);
      await example.getByRole('button', { name: 'Hint: the numbers put in' }).first().click();
      await example.getByRole('button', { name: 'Show this step' }).first().click();
      await expect
        .poll(() => example.getByRole('status').first().textContent())
        .toBe('It is 28\u00a0kJ/in.');
      expect(trouble).toEqual([]);
    });
  });

  it('comes with fresh numbers, again and again, in the reader’s units', async () => {
    await visit(lesson, { units: 'metric' }, async ({ page, trouble }) => {
      const example = await heatExample(page);
      const seen = new Set<string>();
      for (let round = 0; round < 4; round++) {
        await example.getByRole('button', { name: 'Fresh numbers' }).click();
        await example.getByRole('textbox').first().waitFor();
        const given = await example.locator('.givens:visible').textContent();
        expect(given).toMatch(/mm\/min/);
        seen.add(given ?? '');
      }
      expect(seen.size).toBeGreaterThan(1);
      expect(trouble).toEqual([]);
    });
  });
});
