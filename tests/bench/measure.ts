/**
 * What the built site weighs and how quickly it answers: `npm run measure`, after `npm run build`.
 * Prints tables: bytes by type, Lighthouse on a phone, and the time from a key to a new result with the
 * processor slowed four times.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import lighthouse from 'lighthouse';
import { chromium } from 'playwright-core';
import { serve } from '../../content/commands/serve.ts';
import { findBrowser } from '../browser/find-browser.ts';
import { site } from '../site/built-site.ts';

const pages = [
  '',
  'lessons/flat-bead/',
  'calculators/heat-input/',
  'exercises/flat-bead/',
  'faults/',
  'audit/checks/',
];

function bytesByType() {
  const types: Record<string, { files: number; KB: number; 'KB with brotli': number }> = {};
  for (const file of site.files) {
    const content = readFileSync(join(site.directory, file.slice(site.base.length)));
    const type = /[^.]+$/.exec(file)?.[0] ?? '';
    const row = types[type] ?? { files: 0, KB: 0, 'KB with brotli': 0 };
    types[type] = row;
    row.files += 1;
    row.KB += content.length / 1000;
    row['KB with brotli'] += brotliCompressSync(content).length / 1000;
  }
  for (const row of Object.values(types)) {
    row.KB = Math.round(row.KB);
    row['KB with brotli'] = Math.round(row['KB with brotli']);
  }
  return types;
}

async function scores(address: string, port: number) {
  const table: Record<string, Record<string, string | number>> = {};
  for (const page of pages) {
    const run = await lighthouse(address + page, { port, logLevel: 'error', output: 'json' });
    if (!run) throw new Error(`Lighthouse gave nothing for ${page}`);
    const { categories, audits } = run.lhr;
    const score = Object.entries(categories).map(([id, { score }]) => [id, (score ?? 0) * 100]);
    table[`/${page}`] = {
      ...Object.fromEntries(score),
      'first paint': audits['first-contentful-paint']?.displayValue ?? '',
      'largest paint': audits['largest-contentful-paint']?.displayValue ?? '',
      blocking: audits['total-blocking-time']?.displayValue ?? '',
      shift: audits['cumulative-layout-shift']?.displayValue ?? '',
    };
  }
  return table;
}

/** Milliseconds from a key to the changed answer on the page, painting left out. */
async function keyTimes(address: string, endpoint: string) {
  const browser = await chromium.connectOverCDP(endpoint);
  const page = await browser.newPage();
  const devtools = await page.context().newCDPSession(page);
  await page.goto(`${address}calculators/heat-input/`);
  await page.locator('[data-calculator][data-alive]').waitFor();
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const times = await page.evaluate(async () => {
    const box = document.querySelector<HTMLInputElement>('#heat-input-current');
    const results = document.querySelector('.results');
    if (!box || !results) throw new Error('no form');
    const seen: number[] = [];
    for (let press = 0; press < 40; press++) {
      const changed = new Promise<number>((done) => {
        const watch = new MutationObserver(() => {
          watch.disconnect();
          done(performance.now());
        });
        watch.observe(results, { subtree: true, childList: true, characterData: true });
      });
      box.value = `${100 + press}`;
      const start = performance.now();
      box.dispatchEvent(new Event('input', { bubbles: true }));
      seen.push((await changed) - start);
      await new Promise((done) => setTimeout(done, 50));
    }
    return seen.sort((a, b) => a - b);
  });
  await browser.close();
  return { median: times[20]?.toFixed(1), highest: times.at(-1)?.toFixed(1) };
}

const serving = await serve({ directory: site.directory, base: site.base, port: 0 });
const { executablePath, args, env } = await findBrowser();
const port = 9333;
const browser = await chromium.launch({
  executablePath,
  args: [...args, `--remote-debugging-port=${port}`],
  env: env as Record<string, string>,
});
try {
  console.table(bytesByType());
  console.table(await scores(serving.address, port));
  console.log('From a key to the result, ms, four times slowed:');
  console.table(await keyTimes(serving.address, `http://127.0.0.1:${port}`));
} finally {
  await browser.close();
  await serving.close();
}
