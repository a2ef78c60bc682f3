import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { sampledPages } from './page-paths.ts';
import { visit } from './reader.ts';

/** The words of the main column that a reader sees. */
// biome-ignore lint/performance/useDomNodeTextContent: what is hidden must not count
const seen = (page: Page) => page.locator('main').innerText();

/** `20.1 mm`, `3/8 in`, `250 °F`: a number with its unit. */
const quantities = (text: string) =>
  text.match(/\d[\d,./-]*\s?(mm|cm|m|in|ft|A|V|kJ\/(mm|in)|°[CF]|kg|lb|min|h|s)\b/g) ?? [];

describe('with scripts switched off', () => {
  it.each(sampledPages)('%s says what it says with them', async (path) => {
    const without = await visit(path, { scripts: false }, ({ page }) => seen(page));
    const withScripts = await visit(path, {}, ({ page }) => seen(page));
    expect(without.length, 'letters').toBeGreaterThan(0.9 * withScripts.length);
    const here = new Set(quantities(without));
    const missing = quantities(withScripts).filter((quantity) => !here.has(quantity));
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
