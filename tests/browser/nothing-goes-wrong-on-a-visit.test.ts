import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { allPages } from './page-paths.ts';
import { visit } from './reader.ts';

/** Scrolls through the page, so that all that waits to be seen comes alive. */
async function readToTheEnd(page: Page) {
  await page.evaluate(async () => {
    for (let y = 0; y < document.documentElement.scrollHeight; y += innerHeight) {
      scrollTo(0, y);
      await new Promise((done) => requestAnimationFrame(done));
    }
  });
}

describe('no error, nothing refused by the policy, no request to another host', () => {
  it.each(allPages)('%s', async (path) => {
    const trouble = await visit(path, {}, async (visit) => {
      await readToTheEnd(visit.page);
      await visit.quiet();
      return visit.trouble;
    });
    expect(trouble).toEqual([]);
  });
});
