import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { sampledPages } from './page-paths.ts';
import { readToTheEnd } from './read-to-the-end.ts';
import { visit } from './reader.ts';

describe('the first stop leads past the menu to the text', () => {
  it.each(sampledPages)('%s', async (path) => {
    const place = await visit(path, {}, async ({ page, quiet }) => {
      // A page made for typing into begins in its box, past the menu already.
      await quiet();
      const begun = await page.evaluate(() => Boolean(document.activeElement?.closest('main')));
      if (begun) return 'MAIN';
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      return page.evaluate(() => document.activeElement?.tagName);
    });
    expect(place).toBe('MAIN');
  });
});

describe('tabbing shows where it is', () => {
  it.each(sampledPages)('%s', async (path) => {
    const found = await visit(path, {}, async ({ page, quiet }) => {
      await readToTheEnd(page);
      await quiet();
      return tabThrough(page);
    });
    expect(found.stops, 'places where Tab stops').toBeGreaterThan(0);
    expect(found.problems).toEqual([]);
  });
});

/** A sound page lets go of the focus after its last control. */
const tooMany = 600;

async function tabThrough(page: Page): Promise<{ stops: number; problems: string[] }> {
  await page.evaluate(watchFocus);
  for (let presses = 0; presses < tooMany; presses++) {
    await page.keyboard.press('Tab');
    // Asking costs more than pressing; a page is left at most ten presses late.
    if (presses % 10 === 9 && (await page.evaluate(() => window.focusSeen.left))) break;
  }
  return page
    .evaluate(() => window.focusSeen)
    .then(({ stops, problems, left }) => ({
      stops,
      problems: left ? problems : [...problems, `the focus never leaves after ${tooMany} presses`],
    }));
}

declare global {
  interface Window {
    /** What watchFocus saw since it was started. */
    focusSeen: { stops: number; problems: string[]; left: boolean };
  }
}

/** Runs in the page: notes what is wrong with each place that gets the focus, once round. */
function watchFocus(): void {
  const seen = { stops: 0, problems: [] as string[], left: false };
  window.focusSeen = seen;
  const outlined = (element: Element) => {
    const { outlineStyle, outlineWidth } = getComputedStyle(element);
    return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
  };
  const problemOf = (focused: Element): string | undefined => {
    const name = focused.outerHTML.slice(0, 120);
    const box = focused.getBoundingClientRect();
    if (box.width < 2 || box.height < 2) return `nothing to see of ${name}`;
    if (box.bottom <= 0 || box.top >= innerHeight) return `out of sight: ${name}`;
    // A radio button may lie unseen over its label, which then shows the focus.
    const marked = [
      focused,
      ...(focused.parentElement?.matches('label') ? focused.parentElement.children : []),
    ];
    return marked.some(outlined) ? undefined : `no outline of 2 px on ${name}`;
  };
  let first: Element | undefined;
  document.addEventListener('focusin', ({ target }) => {
    if (seen.left || !(target instanceof Element)) return;
    if (target === first) {
      seen.left = true;
      return;
    }
    first ??= target;
    seen.stops++;
    const problem = problemOf(target);
    if (problem) seen.problems.push(problem);
  });
}
