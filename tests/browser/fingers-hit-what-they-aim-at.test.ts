import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { sampledPages } from './page-paths.ts';
import { readToTheEnd } from './read-to-the-end.ts';
import { visit } from './reader.ts';

const smallest = 44;

describe(`controls are at least ${smallest} px each way on a phone`, () => {
  it.each(sampledPages)('%s', async (path) => {
    const small = await visit(path, { width: 360, height: 640 }, async ({ page, quiet }) => {
      await readToTheEnd(page);
      await quiet();
      return smallTargets(page);
    });
    expect(small).toEqual([]);
  });
});

/** Links within a sentence are as high as the line (WCAG 2.2, 2.5.8 excepts them). */
async function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate((smallest) => {
    const controls =
      'button, select, textarea, summary, input:not([type="hidden"]), nav a, [role="button"], [role="tab"]';
    return [...document.querySelectorAll(controls)].flatMap((control) => {
      if (!control.checkVisibility({ visibilityProperty: true })) return [];
      const labels = control instanceof HTMLInputElement ? [...(control.labels ?? [])] : [];
      const ticked = control.matches('[type="radio"], [type="checkbox"]');
      const boxes = [control, ...(ticked ? labels : [])].map((one) => one.getBoundingClientRect());
      const width = Math.max(...boxes.map((box) => box.width));
      const height = Math.max(...boxes.map((box) => box.height));
      if (width === 0 || height === 0) return [];
      // Half a pixel for rounding.
      if (width >= smallest - 0.5 && height >= smallest - 0.5) return [];
      return [`${width.toFixed(1)} × ${height.toFixed(1)}: ${control.outerHTML.slice(0, 120)}`];
    });
  }, smallest);
}
