import { describe, expect, it } from 'vitest';
import { site } from '../site/built-site.ts';
import { KB, weightOfFile } from '../site/weight.ts';
import { sampledPages } from './page-paths.ts';
import { visit } from './reader.ts';

/** What the browser really fetches, where tests/site/pages-are-light reckons from the files. */
describe('a lesson on a phone, opened and not touched, fetches at most 20 KB', () => {
  it.each(sampledPages.filter((path) => /\/lessons\/./.test(path)))('%s', async (path) => {
    const phone = { width: 360, height: 640 };
    const fetched = await visit(path, phone, async ({ page, quiet }) => {
      await quiet();
      return page.evaluate(() =>
        [location.href, ...performance.getEntriesByType('resource').map(({ name }) => name)].map(
          (address) => decodeURIComponent(new URL(address).pathname),
        ),
      );
    });
    const weights = [...new Set(fetched)].map((address) => [
      address,
      site.files.has(address)
        ? weightOfFile(address, site)
        : weightOfFile(`${address}index.html`, site),
    ]);
    const total = weights.reduce((sum, [, weight]) => sum + Number(weight), 0);
    expect(total, `bytes: ${weights.map((each) => each.join(' ')).join(', ')}`).toBeLessThanOrEqual(
      20 * KB,
    );
  });
});
