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

async function violationsOn(page: Page): Promise<string[]> {
  return page.evaluate(async (values) => {
    const { axe: inPage } = window as unknown as { axe: typeof import('axe-core') };
    const { violations } = await inPage.run({
      runOnly: { type: 'tag', values },
      resultTypes: ['violations'],
    });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id} at ${target.join(' ')}: ${failureSummary}`),
    );
  }, rules);
}
