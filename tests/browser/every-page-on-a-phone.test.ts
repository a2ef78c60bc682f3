import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { structure, violationsOn } from './axe.ts';
import { faintText } from './faint-text.ts';
import { allPages } from './page-paths.ts';
import { readToTheEnd } from './read-to-the-end.ts';
import { visit } from './reader.ts';
import { stickingOut } from './sticking-out.ts';

const phone = { width: 360, height: 640 };
/** A window of 1,280 px at 400 % zoom (WCAG 2.2, 1.4.10 Reflow). */
const zoomed = { width: 320, height: 640 };

const show = (page: Page, units: 'us' | 'metric') =>
  page.evaluate((units) => {
    document.documentElement.dataset.units = units;
  }, units);

/**
 * Each page is opened once and looked at in every way: both unit systems, both themes. What axe asks
 * beside colors does not hang on the theme, and hardly on the units: pages meet it in each in turn,
 * and the heaviest of each kind meet all of it in everyone-can-read-it.
 */
describe('no error, nothing refused or from elsewhere, nothing moving, no sideways scrolling, clean in every look', () => {
  it.each(allPages.map((path, at) => [path, at] as const))('%s', async (path, at) => {
    await visit(path, phone, async ({ page, trouble, quiet }) => {
      await readToTheEnd(page);
      await quiet();
      expect(trouble).toEqual([]);
      expect(await page.evaluate(() => document.getAnimations().length), 'moving').toBe(0);
      for (const units of ['us', 'metric'] as const) {
        await show(page, units);
        for (const size of [zoomed, phone]) {
          await page.setViewportSize(size);
          expect(await stickingOut(page)).toEqual([]);
        }
        for (const colorScheme of ['light', 'dark'] as const) {
          await page.emulateMedia({ colorScheme });
          expect(await faintText(page), `${units}, ${colorScheme}`).toEqual([]);
        }
      }
      await show(page, at % 2 === 0 ? 'us' : 'metric');
      expect(await violationsOn(page, structure)).toEqual([]);
    });
  });
});

it('sees text that is too faint, in either theme', async () => {
  await visit(allPages.at(-1) as string, phone, async ({ page }) => {
    for (const [colorScheme, gray] of [
      ['light', '#888'],
      ['dark', '#666'],
    ] as const) {
      await page.emulateMedia({ colorScheme });
      await page.evaluate((gray) => {
        document.querySelector('#planted')?.remove();
        const planted = Object.assign(document.createElement('p'), { id: 'planted' });
        planted.append('Gray on the ground of the page');
        planted.style.color = gray;
        document.querySelector('main')?.append(planted);
      }, gray);
      expect(await faintText(page)).toEqual([expect.stringContaining('planted')]);
    }
  });
});
