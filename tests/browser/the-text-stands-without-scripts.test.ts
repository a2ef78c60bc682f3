import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { sampledPages } from './page-paths.ts';
import { visit } from './reader.ts';

/** The words of the main column that a reader sees. */
// biome-ignore lint/performance/useDomNodeTextContent: what is hidden must not count
const seen = (page: Page) => page.locator('main').innerText();

/** Letters that are read; buttons and the names of fields do not count, since only a script acts on them. */
async function letters(page: Page): Promise<number> {
  const controls = await page.locator('main :is(button, label)').allInnerTexts();
  return (await seen(page)).length - controls.join('').length;
}

/** `20.1 mm`, `3/8 in`, `250 °F`: a number with its unit. */
const quantities = (text: string) =>
  text.match(/\d[\d,./-]*\s?(mm|cm|m|in|ft|A|V|kJ\/(mm|in)|°[CF]|kg|lb|min|h|s)\b/g) ?? [];

/** Pages that build a reader's own sheet out of what is typed; the rest says the same with scripts and without. */
const isFilledIn = (path: string) => /\/(board|class|log|record|test-sheet)\/$/.test(path);
const readPages = sampledPages.filter((path) => !isFilledIn(path));
const filledInPages = sampledPages.filter(isFilledIn);

describe('with scripts switched off', () => {
  it.each(filledInPages)(
    '%s tells that it needs them, and what stands there instead',
    async (path) => {
      await visit(path, { scripts: false }, async ({ page }) => {
        expect(await letters(page)).toBeGreaterThan(600);
        expect(await seen(page)).toMatch(/needs scripts/);
      });
    },
  );

  it.each(readPages)('%s says what it says with them', async (path) => {
    const without = await visit(path, { scripts: false }, async ({ page }) => ({
      text: await seen(page),
      letters: await letters(page),
    }));
    const withScripts = await visit(path, {}, async ({ page, quiet }) => {
      await quiet();
      return { text: await seen(page), letters: await letters(page) };
    });
    expect(without.letters, 'letters').toBeGreaterThan(0.9 * withScripts.letters);
    const here = new Set(quantities(without.text));
    const missing = quantities(withScripts.text).filter((quantity) => !here.has(quantity));
    expect(missing, 'quantities that need a script').toEqual([]);
  });

  it('the units can still be switched', async () => {
    const path = sampledPages.find((one) => /\/lessons\/./.test(one)) ?? '/';
    await visit(path, { scripts: false }, async ({ page }) => {
      const inches = await seen(page);
      await page.getByLabel('metric').first().check();
      const metric = await seen(page);
      expect(quantities(inches).join()).toMatch(/in\b/);
      expect(metric).not.toBe(inches);
      expect(quantities(metric).join()).toMatch(/mm\b/);
    });
  });
});
