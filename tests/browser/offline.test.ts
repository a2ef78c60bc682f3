import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from 'vitest';
import { writeOfflineCopy } from '../../content/build/offline-copy.ts';
import { type Serving, serve } from '../../content/commands/serve.ts';
import { buildBelow } from '../site/build-below.ts';
import { printed } from './printed.ts';

/** Below a path, which is the harder case; the server is stopped to take the network away. */
const base = '/course/';
let directory: string;
let serving: Serving;
let address: string;
let port: number;
let browser: Browser;
let context: BrowserContext | undefined;

beforeAll(async () => {
  directory = await buildBelow(base);
  browser = await chromium.connect(inject('browser'));
  serving = await serve({ directory, base, port: 0 });
  address = serving.address;
  port = Number(new URL(address).port);
}, 120_000);

afterEach(async () => {
  await context?.close();
  context = undefined;
});

afterAll(async () => {
  await serving.close();
  rmSync(directory, { recursive: true, force: true });
});

const stopServer = () => serving.close();
async function startServer(): Promise<void> {
  serving = await serve({ directory, base, port });
}

/** A reader who was never here, on a phone. */
async function newReader({ savesData = false } = {}): Promise<Page> {
  context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  context.setDefaultTimeout(20_000);
  if (savesData) {
    await context.addInitScript(() => {
      Object.defineProperty(navigator, 'connection', {
        value: { saveData: true, effectiveType: '4g' },
      });
    });
  }
  return context.newPage();
}

const said = (page: Page) => page.locator('[data-offline] [role="status"]');
const kept = 'It is on this device now';

async function visitOnce(page: Page): Promise<void> {
  await page.goto(address);
  await said(page).filter({ hasText: kept }).waitFor();
}

describe('after one visit, with the network gone', () => {
  it('the whole course opens and prints: pages never seen, links with numbers, lost addresses', async () => {
    const page = await newReader();
    await visitOnce(page);
    await stopServer();
    try {
      await page.goto(`${address}lessons/fillet-2f`);
      expect(new URL(page.url()).pathname).toBe(`${base}lessons/fillet-2f/`);
      expect(await page.locator('h1').count()).toBe(1);
      const paper = await printed(page, 'Letter');
      expect(paper).toEqual({ pages: expect.any(Number), cut: [], alone: [] });
      expect(paper.pages).toBeGreaterThan(1);

      // Without its final slash and with what somebody typed: a link mangled in a message.
      await page.goto(`${address}calculators/heat-input?heat-input.current=131A`);
      await page.locator('[data-calculator][data-alive]').waitFor();
      // Alive first, then with what the address says.
      await expect.poll(() => page.locator('#heat-input-current').inputValue()).toContain('131');

      await page.goto(`${address}lessons/flat-bead/index.html`);
      expect(await page.locator('h1').textContent()).toContain('bead');

      const lost = await page.goto(`${address}nowhere/at/all/`);
      expect(lost?.status()).toBe(404);
      expect(await page.locator('h1').textContent()).toBe('No page here');
    } finally {
      await startServer();
    }
  });

  it('it comes from the home screen too: the start address is among what is kept', async () => {
    const page = await newReader();
    await visitOnce(page);
    const { start_url, icons } = JSON.parse(
      readFileSync(join(directory, 'course.webmanifest'), 'utf8'),
    );
    await stopServer();
    try {
      for (const wanted of [start_url, ...icons.map(({ src }: { src: string }) => src)]) {
        const response = await page.evaluate(
          (url) => fetch(url).then(({ status }) => status),
          wanted,
        );
        expect(response, wanted).toBe(200);
      }
    } finally {
      await startServer();
    }
  });
});

describe('before anything is loaded', () => {
  it('a device that saves data is asked first, with the size; what it has seen it keeps', async () => {
    const page = await newReader({ savesData: true });
    await page.goto(`${address}lessons/flat-bead/`);
    const button = page.locator('[data-offline] button');
    await button.waitFor();
    expect(await button.textContent()).toMatch(/^Keep the whole course .*\(\d+\.\d MB\)$/);
    // The worker has taken charge by now; this visit it sees.
    await page.goto(`${address}lessons/padding-flat/`);
    await button.waitFor();
    await stopServer();
    try {
      await page.goto(`${address}lessons/padding-flat/?x=1`);
      expect(await page.locator('h1').textContent()).not.toBe('Without a network');
      const other = await page.goto(`${address}lessons/fillet-4f/`);
      expect(other?.status()).toBe(503);
      expect(await page.locator('h1').textContent()).toBe('Without a network');
    } finally {
      await startServer();
    }
    await page.goto(address);
    await button.click();
    await said(page).filter({ hasText: kept }).waitFor();
  });
});

describe('trouble with the room on the device', () => {
  it('says so when it is full, and the pages still open', async () => {
    const page = await newReader();
    const devtools = await page.context().newCDPSession(page);
    const { origin } = new URL(address);
    await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 200_000 });
    await page.goto(address);
    await said(page).filter({ hasText: 'no room' }).waitFor();
    await page.goto(`${address}lessons/flat-bead/`);
    expect(await page.locator('h1').count()).toBe(1);
    await devtools.send('Storage.overrideQuotaForOrigin', { origin });
    // The browser may take a moment to notice its new room.
    const button = page.getByRole('button', { name: 'Keep the whole course' });
    const pressAgain = async () => {
      if (await button.isVisible()) await button.click();
      return said(page).textContent();
    };
    await expect.poll(pressAgain, { timeout: 20_000, interval: 500 }).toContain(kept);
  });

  it('a browser that threw everything away has it back after the next visit', async () => {
    const page = await newReader();
    await visitOnce(page);
    const devtools = await page.context().newCDPSession(page);
    await page.evaluate(async () => {
      for (const name of await caches.keys()) await caches.delete(name);
    });
    await page.goto(`${address}lessons/flat-bead/`);
    await said(page).filter({ hasText: kept }).waitFor();
    await devtools.detach();
  });

  it('the reader can take it off the device, and it stays off', async () => {
    const page = await newReader();
    await visitOnce(page);
    await page.getByRole('button', { name: 'Take it off this device' }).click();
    await said(page).filter({ hasText: 'off this device' }).waitFor();
    await page.reload();
    await page.getByRole('button', { name: 'Keep the whole course' }).waitFor();
  });

  it('another site on the same host keeps what is its own', async () => {
    const page = await newReader();
    await page.goto(address);
    await page.evaluate(async () => {
      const theirs = await caches.open('theirs');
      await theirs.put('/neighbor', new Response('ours'));
    });
    await said(page).filter({ hasText: kept }).waitFor();
    expect(await page.evaluate(() => caches.has('theirs'))).toBe(true);
    expect(await page.evaluate(() => caches.keys().then((names) => names.sort()))).toEqual([
      'sixteenths/course/',
      'theirs',
    ]);
  });
});

describe('a newer version', () => {
  it('waits for a tap, loads only what changed, and leaves what was typed', async () => {
    const page = await newReader();
    await visitOnce(page);
    await page.goto(`${address}calculators/heat-input/`);
    await page.locator('[data-calculator][data-alive]').waitFor();
    await page.locator('#heat-input-current').fill('133');

    const changed = join(directory, 'lessons/flat-bead/index.html');
    const before = readFileSync(changed, 'utf8');
    writeFileSync(changed, before.replace('<h1>', '<h1>Newer: '));
    writeOfflineCopy(directory, base);
    const fetched: string[] = [];
    context?.on('response', (response) => {
      if (response.request().serviceWorker() && !response.fromServiceWorker())
        fetched.push(new URL(response.url()).pathname);
    });
    try {
      await page.evaluate(() => navigator.serviceWorker.ready.then((one) => one.update()));
      const bar = page.locator('.newer');
      await bar.waitFor();

      // Nothing has changed yet, in this tab or in another.
      const other = await page.context().newPage();
      await other.goto(`${address}lessons/flat-bead/`);
      expect(await other.locator('h1').textContent()).not.toContain('Newer');

      await bar.getByRole('button', { name: 'Use it' }).click();
      await bar.getByText('What you typed here stays').waitFor();
      expect(await page.locator('#heat-input-current').inputValue()).toBe('133');
      // The older worker is active too, for as long as the newer one waits.
      await expect
        .poll(() =>
          page.evaluate(() =>
            navigator.serviceWorker.ready.then((one) => !one.waiting && one.active?.state),
          ),
        )
        .toBe('activated');

      await stopServer();
      await other.goto(`${address}lessons/flat-bead/?after`);
      expect(await other.locator('h1').textContent()).toContain('Newer');
      // The old page goes on, files of its own version included.
      await page.locator('#heat-input-current').fill('134');
      expect(await page.locator('#heat-input-current').inputValue()).toBe('134');
      await startServer();
    } finally {
      writeFileSync(changed, before);
      writeOfflineCopy(directory, base);
    }
    const pages = fetched.filter((path) => !path.endsWith('/sw.js'));
    expect(pages).toEqual([`${base}lessons/flat-bead/`]);
  });
});
