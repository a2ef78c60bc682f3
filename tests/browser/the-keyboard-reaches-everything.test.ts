import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { sampledPages } from './page-paths.ts';
import { readToTheEnd } from './read-to-the-end.ts';
import { visit } from './reader.ts';

describe.each(['light', 'dark'] as const)('tabbing shows where it is, in the %s theme', (theme) => {
  it.each(sampledPages)('%s', async (path) => {
    const found = await visit(path, { theme }, async ({ page, quiet }) => {
      await readToTheEnd(page);
      await quiet();
      return tabThrough(page);
    });
    expect(found.stops, 'places where Tab stops').toBeGreaterThan(0);
    expect(found.problems).toEqual([]);
  });
});

describe('the first stop leads past the menu to the text', () => {
  it.each(sampledPages)('%s', async (path) => {
    const place = await visit(path, {}, async ({ page }) => {
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      return page.evaluate(() => document.activeElement?.tagName);
    });
    expect(place).toBe('MAIN');
  });
});

/** A sound page lets go of the focus after its last control. */
const tooMany = 400;

async function tabThrough(page: Page): Promise<{ stops: number; problems: string[] }> {
  const problems: string[] = [];
  for (let stops = 0; stops < tooMany; stops++) {
    await page.keyboard.press('Tab');
    const problem = await page.evaluate(problemOfFocus);
    if (problem === 'left the page') return { stops, problems };
    if (problem) problems.push(problem);
  }
  return {
    stops: tooMany,
    problems: [...problems, `the focus never leaves after ${tooMany} stops`],
  };
}

/** Runs in the page: what is wrong with the place where the focus is now. */
function problemOfFocus(): string | undefined {
  const focused = document.activeElement;
  if (
    !(focused instanceof HTMLElement || focused instanceof SVGElement) ||
    focused === document.body
  ) {
    return 'left the page';
  }
  const name = focused.outerHTML.slice(0, 120);
  const box = focused.getBoundingClientRect();
  if (box.width < 2 || box.height < 2) return `nothing to see of ${name}`;
  if (box.bottom <= 0 || box.top >= innerHeight) return `out of sight: ${name}`;
  const look = (element: Element) => {
    const { outlineStyle, outlineWidth, boxShadow, borderColor } = getComputedStyle(element);
    return {
      outlined: outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2,
      boxShadow,
      borderColor,
    };
  };
  const marked = [focused, ...(focused instanceof HTMLInputElement ? (focused.labels ?? []) : [])];
  if (marked.some((element) => look(element).outlined)) return undefined;
  return `no outline of 2 px on ${name}`;
}
