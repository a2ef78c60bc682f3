import { expect, it } from 'vitest';
import { site } from '../site/built-site.ts';
import { shiftsOn } from './layout-shifts.ts';
import { allPages } from './page-paths.ts';
import { visit } from './reader.ts';

const longest = (parent: string) =>
  allPages.find((path) => path.startsWith(`${site.base}${parent}`)) as string;

it.each([
  longest('audit/checks/'),
  `${site.base}audit/checks/`,
  `${site.base}audit/numbers/`,
  `${site.base}audit/hours/`,
])('no row of %s moves those above it, on a slow line', async (path) => {
  const shifts = await visit(path, { width: 360, height: 2000 }, async ({ page }) => {
    const devtools = await page.context().newCDPSession(page);
    const atBytesASecond = (downloadThroughput: number) =>
      devtools.send('Network.emulateNetworkConditions', {
        offline: false,
        latency: 0,
        downloadThroughput,
        uploadThroughput: -1,
      });
    await atBytesASecond(20_000);
    try {
      await page.goto(`${path}?slow`, { waitUntil: 'load' });
      return await shiftsOn(page);
    } finally {
      await atBytesASecond(-1);
      await devtools.detach();
    }
  });
  // A head may come in two parts; it grows before any row stands below it.
  expect(shifts.filter((shift) => !/^[^:]*: <th scope="col"/.test(shift))).toEqual([]);
});
