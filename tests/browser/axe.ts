import axe, { type RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';

/** All that WCAG 2.2 A and AA ask for and a program can see, and what axe itself advises. */
export const everyRule: RunOptions = {
  runOnly: {
    type: 'tag',
    values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  },
};

/** The same without the two rules that look at colors and boxes, which take most of axe's time. */
export const structure: RunOptions = {
  ...everyRule,
  rules: { 'color-contrast': { enabled: false }, 'target-size': { enabled: false } },
};

export const contrast: RunOptions = { runOnly: { type: 'rule', values: ['color-contrast'] } };

/** What axe finds on the open page, a sentence each. */
export async function violationsOn(page: Page, options = everyRule): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
  return page.evaluate(async (options) => {
    const { axe: inPage } = window as unknown as { axe: typeof axe };
    const { violations } = await inPage.run({
      ...options,
      resultTypes: ['violations'],
      preload: false,
    });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id} at ${target.join(' ')}: ${failureSummary}`),
    );
  }, options);
}
