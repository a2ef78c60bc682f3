import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { allPages, sampledPages } from './page-paths.ts';
import { readToTheEnd } from './read-to-the-end.ts';
import { visit } from './reader.ts';

/** A small phone; and a window of 1,280 px at 400 % zoom (WCAG 2.2, 1.4.10 Reflow). */
const widths = [360, 320];

describe('every page fits 360 px, and 320 px as at 400 % zoom', () => {
  it.each(allPages)('%s', async (path) => {
    const found = await visit(path, { width: 360 }, async ({ page }) => {
      await readToTheEnd(page);
      const sticking: string[] = [];
      for (const width of widths) {
        await page.setViewportSize({ width, height: 640 });
        sticking.push(...(await stickingOut(page)));
      }
      return sticking;
    });
    expect(found).toEqual([]);
  });
});

describe('text of twice the size needs no sideways scrolling either (WCAG 2.2, 1.4.4)', () => {
  it.each(sampledPages)('%s', async (path) => {
    const found = await visit(path, { width: 800 }, async ({ page }) => {
      await readToTheEnd(page);
      await page.evaluate(() => {
        document.documentElement.style.fontSize = '200%';
      });
      return stickingOut(page);
    });
    expect(found).toEqual([]);
  });
});

/** What reaches past the right edge, unless it scrolls inside a frame of its own. */
async function stickingOut(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const room = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= room) return [];
    const scrollsInside = (element: Element | null): boolean =>
      element !== null &&
      element !== document.body &&
      (/auto|scroll|hidden|clip/.test(getComputedStyle(element).overflowX) ||
        scrollsInside(element.parentElement));
    const wide = [...document.body.querySelectorAll('*')].filter(
      (element) =>
        element.getBoundingClientRect().right > room + 0.5 && !scrollsInside(element.parentElement),
    );
    const widest = document.documentElement.scrollWidth;
    return [
      `at ${room} px the page is ${widest} px wide`,
      ...wide.slice(0, 3).map((element) => element.outerHTML.slice(0, 120)),
    ];
  });
}
