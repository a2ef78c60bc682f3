import { expect, it } from 'vitest';
import { site } from '../site/built-site.ts';
import { visit } from './reader.ts';

const calculator = `${site.base}calculators/heat-input/`;
const other = `${site.base}glossary/`;
const current = '#heat-input-current';

it('says so when the code of a calculator does not come, and keeps what was typed', async () => {
  await visit(calculator, {}, async ({ page }) => {
    await page.route('**/_astro/heat-input.*.js', (route) => route.abort());
    await page.reload({ waitUntil: 'load' });
    await page.fill(current, '128 A');
    await page.getByText('This did not load. Reload the page.').waitFor();
    expect(await page.inputValue(current)).toBe('128 A');
    await page.unroute('**/_astro/heat-input.*.js');
  });
});

it('shows the same numbers after a look at another page and the way back', async () => {
  await visit(calculator, {}, async ({ page, trouble }) => {
    await page.locator('[data-alive]').waitFor();
    const opening = await page.locator('.results').textContent();
    await page.fill(current, '100 A');
    await expect.poll(() => page.locator('.results').textContent()).not.toBe(opening);
    const typed = await page.locator('.results').textContent();
    await page.waitForURL(/current=100/);
    await page.goto(other);
    await page.goBack();
    await expect.poll(() => page.locator('.results').textContent()).toBe(typed);
    expect(await page.inputValue(current)).toBe('100 A');
    expect(trouble).toEqual([]);
  });
});

it('computes the same with a clock that is years off', async () => {
  await visit(calculator, {}, async ({ page }) => {
    await page.locator('[data-alive]').waitFor();
    await page.fill(current, '100 A');
    await page.waitForURL(/current=100/);
    const right = await page.locator('.results').textContent();
    const address = page.url();
    await page.clock.setFixedTime(new Date('2001-01-01T00:00:00Z'));
    await page.goto(address);
    await expect.poll(() => page.locator('.results').textContent()).toBe(right);
  });
});

it.each([
  ['booth', 'Exercise, or lesson alone', 'exercise/fillet-2f'],
  ['grading', 'Exercise', 'fillet-2f'],
])('keeps what was chosen on the %s page before its code came', async (name, label, value) => {
  await visit(`${site.base}${name}/`, {}, async ({ page }) => {
    const scripts = '**/_astro/*.js';
    const { promise: late, resolve: come } = Promise.withResolvers<void>();
    await page.route(scripts, async (route) => {
      await late;
      await route.continue();
    });
    await page.reload({ waitUntil: 'commit' });
    await page.getByLabel(label).selectOption(value);
    come();
    const alive = page.locator(`#${name}-pick`);
    await alive.waitFor();
    await expect.poll(() => alive.inputValue()).toBe(value);
    await page.unroute(scripts);
  });
});
