import { describe, expect, it } from 'vitest';
import { sampledPages } from './page-paths.ts';
import { readToTheEnd } from './read-to-the-end.ts';
import { visit } from './reader.ts';
import { stickingOut } from './sticking-out.ts';

describe('text of twice the size needs no sideways scrolling (WCAG 2.2, 1.4.4)', () => {
  it.each(sampledPages)('%s', async (path) => {
    await visit(path, { width: 800 }, async ({ page }) => {
      await readToTheEnd(page);
      await page.evaluate(() => {
        document.documentElement.style.fontSize = '200%';
      });
      expect(await stickingOut(page)).toEqual([]);
    });
  });
});
