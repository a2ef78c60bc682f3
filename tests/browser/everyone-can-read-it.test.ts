import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { sampledPages } from './page-paths.ts';
import { visit } from './reader.ts';

const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** Each unit system in both themes, and both widths in turn. */
const looks = {
  us: [
    { colorScheme: 'light', width: 1280 },
    { colorScheme: 'dark', width: 360 },
  ],
  metric: [
    { colorScheme: 'dark', width: 1280 },
    { colorScheme: 'light', width: 360 },
  ],
} as const;

describe.each(['us', 'metric'] as const)('axe finds nothing to better: %s units', (units) => {
  it.each(sampledPages)('%s', async (path) => {
    const found = await visit(path, { units }, async ({ page }) => {
      await page.evaluate(axe.source);
      const violations: string[] = [];
      for (const { colorScheme, width } of looks[units]) {
        await page.emulateMedia({ colorScheme });
        await page.setViewportSize({ width, height: 800 });
        const inThisLook = await violationsOn(page);
        violations.push(...inThisLook.map((one) => `${colorScheme}, ${width} px: ${one}`));
      }
      return violations;
    });
    expect(found).toEqual([]);
  });
});

describe('with colors forced by the reader, text and fields stand out', () => {
  it.each(sampledPages)('%s', async (path) => {
    const found = await visit(path, { width: 360 }, async ({ page }) => {
      await page.emulateMedia({ forcedColors: 'active' });
      await page.evaluate(axe.source);
      const faint = await violationsOn(page, { type: 'rule', values: ['color-contrast'] });
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

type Only = { type: 'tag' | 'rule'; values: string[] };

async function violationsOn(
  page: Page,
  only: Only = { type: 'tag', values: rules },
): Promise<string[]> {
  return page.evaluate(async (runOnly) => {
    const { axe: inPage } = window as unknown as { axe: typeof import('axe-core') };
    const { violations } = await inPage.run({
      runOnly,
      resultTypes: ['violations'],
    });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id} at ${target.join(' ')}: ${failureSummary}`),
    );
  }, only);
}
