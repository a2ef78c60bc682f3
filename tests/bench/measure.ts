/**
 * What the built site weighs and how quickly it answers: `npm run measure`, after `npm run build`.
 * Prints tables: bytes by type, Lighthouse on a phone, the time from a key to a new result with the
 * processor slowed four times, and how the build grows with its lessons. Takes some ten minutes.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import lighthouse from 'lighthouse';
import { chromium } from 'playwright-core';
import { serve } from '../../content/commands/serve.ts';
import { findBrowser } from '../browser/find-browser.ts';
import { site } from '../site/built-site.ts';
import { buildTimes } from './build-times.ts';

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

/** What a frame of a screen lasts, in milliseconds. */
const frame = 16.7;

/**
 * Milliseconds from a key to the changed answer on the page, painting left out: the ten slowest forms
 * of all.
 */
async function keyTimes(address: string, endpoint: string) {
  const browser = await chromium.connectOverCDP(endpoint);
  const page = await browser.newPage();
  const devtools = await page.context().newCDPSession(page);
  const ids = [...site.files].flatMap(
    (file) => /\/calculators\/([^/]+)\/index/.exec(file)?.[1] ?? [],
  );
  const rows: { form: string; median: number; nineInTen: number }[] = [];
  for (const form of ids) {
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    await page.goto(`${address}calculators/${form}/`);
    await page.locator('[data-calculator][data-alive]').waitFor();
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    const times = await page.evaluate(pressKeys);
    if (times.length > 0)
      rows.push({ form, median: quantile(times, 0.5), nineInTen: quantile(times, 0.9) });
  }
  await browser.close();
  const late = rows.filter(({ median }) => median > frame).length;
  console.log(
    `${rows.length} forms with a box for a number; ${late} take longer than a frame of ${frame} ms.`,
  );
  return Object.fromEntries(
    rows
      .sort((a, b) => b.median - a.median)
      .slice(0, 10)
      .map(({ form, median, nineInTen }) => [
        form,
        { median: median.toFixed(1), 'nine in ten': nineInTen.toFixed(1) },
      ]),
  );
}

const quantile = (sorted: readonly number[], part: number): number =>
  sorted[Math.floor(part * (sorted.length - 1))] ?? 0;

/** Runs in the page: types forty numbers near the first one there is. */
async function pressKeys(): Promise<number[]> {
  const boxes = [...document.querySelectorAll<HTMLInputElement>('.calculator input')];
  // Not a fraction: it could not be made a little more.
  const box = boxes.find(({ value }) => /^\s*\d+(\.\d+)?\s*[^\d\s/.-]*$/.test(value));
  const results = document.querySelector('.results');
  const [, number = '', unit = ''] = /^\s*([\d.]+)(.*)$/.exec(box?.value ?? '') ?? [];
  if (!box || !results) return [];
  const seen: number[] = [];
  for (let press = 0; press < 40; press++) {
    const changed = new Promise<number | undefined>((done) => {
      const watch = new MutationObserver(() => {
        watch.disconnect();
        done(performance.now());
      });
      watch.observe(results, { subtree: true, childList: true, characterData: true });
      setTimeout(() => done(undefined), 300);
    });
    box.value = `${Number((Number(number) * (1 + (press % 8) / 50)).toPrecision(4))}${unit}`;
    const start = performance.now();
    box.dispatchEvent(new Event('input', { bubbles: true }));
    // A number that changes no answer as it is shown says nothing.
    const end = await changed;
    if (end !== undefined) seen.push(end - start);
    await new Promise((done) => setTimeout(done, 50));
  }
  return seen.sort((a, b) => a - b);
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
  console.log('From a key to the result, ms, the processor slowed four times:');
  console.table(await keyTimes(serving.address, `http://127.0.0.1:${port}`));
} finally {
  await browser.close();
  await serving.close();
}
console.log('To build:');
console.table(buildTimes([25, 250, 1000]));
