import { describe, expect, it } from 'vitest';
import { contrast, violationsOn } from './axe.ts';
import { sampledPages } from './page-paths.ts';
import { visit } from './reader.ts';

/** Every choice of each kind meets two of the others; every-page-on-a-phone looks at the rest. */
const looks = [
  { units: 'us', theme: 'light', width: 1280 },
  { units: 'metric', theme: 'dark', width: 360 },
] as const;

describe.each(looks)('axe finds nothing to better: $units, $theme, $width px', (look) => {
  it.each(sampledPages)('%s', async (path) => {
    const found = await visit(path, look, ({ page }) => violationsOn(page));
    expect(found).toEqual([]);
  });
});

describe('with colors forced by the reader, text and fields stand out', () => {
  it.each(sampledPages)('%s', async (path) => {
    const found = await visit(path, { width: 360 }, async ({ page }) => {
      await page.emulateMedia({ forcedColors: 'active' });
      const faint = await violationsOn(page, contrast);
      const bare = await page.evaluate(() =>
        [
          ...document.querySelectorAll(
            'input:not([type=radio], [type=checkbox], [type=range]), select, button',
          ),
        ]
          .filter((field) => field.checkVisibility())
          .filter((field) => Number.parseFloat(getComputedStyle(field).borderTopWidth) < 1)
          .map((field) => field.outerHTML.slice(0, 80)),
      );
      await page.emulateMedia({ forcedColors: null });
      return [...faint, ...bare];
    });
    expect(found).toEqual([]);
  });
});
