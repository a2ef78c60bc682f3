/**
 * The instructor's bench: the numbers of a booth reach the lesson through its link alone, its sheets
 * are one page each, its code is read from afar; readings become verdicts, tables and records.
 */
import { text } from 'node:stream/consumers';
import { PDFDocument } from 'pdf-lib';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import decodeQR from 'qr/decode.js';
import { describe, expect, it } from 'vitest';
import { readFile as readKept } from '../../lib/files/file-kind.ts';
import { learnerRecord } from '../../lib/files/learner-record.ts';
import { site } from '../site/built-site.ts';
import { visit } from './reader.ts';

const lesson = (query: string) => `${site.base}lessons/fillet-2f/?${query}`;
const booth =
  'booth.v=1&booth.exercise=fillet-2f&booth.electrode=5/32in&booth.leg=3/8in&booth.place=7';

describe('a lesson opened with the link of a booth', () => {
  it('says whose numbers these are, and shows them in forms and examples', () =>
    visit(lesson(booth), {}, async ({ page, trouble, quiet }) => {
      const banner = page.getByRole('complementary', { name: 'Numbers of a booth' });
      await banner.getByText('Used in').waitFor();
      expect(await banner.textContent()).toContain('Numbers of booth 7');
      const example = page.locator('.worked-example').first();
      // The throat of a 3/8 in fillet is 0.7071 of its leg: 0.2652 in.
      expect(await example.textContent()).toContain('0.265');
      await page.locator('#fillet-throat-legA').scrollIntoViewIfNeeded();
      await page.locator('[data-calculator="fillet-throat"][data-alive]').waitFor();
      expect(await page.locator('#fillet-throat-legA').inputValue()).toBe('3/8');
      const onward = example.getByRole('link', { name: 'Try it with your own numbers' });
      expect(await onward.getAttribute('href')).toContain('booth.leg=3/8in');
      await page.locator('#fillet-throat-legA').fill('1/2');
      await page.getByRole('button', { name: 'Back to the example' }).click();
      expect(await page.locator('#fillet-throat-legA').inputValue()).toBe('3/8');
      await quiet();
      expect(trouble).toEqual([]);
      await banner.getByRole('link', { name: 'Back to the standard numbers' }).click();
      await page.waitForURL((url) => !url.search.includes('booth.'));
      expect(await page.locator('#fillet-throat-legA').inputValue()).toBe('5/16');
    }));

  it('follows the reader’s units', () =>
    visit(lesson(`${booth}&units=metric`), {}, async ({ page }) => {
      const banner = page.getByRole('complementary', { name: 'Numbers of a booth' });
      await banner.getByText('Used in').waitFor();
      expect(await banner.textContent()).toContain('9.5\u00a0mm');
      await page.locator('#fillet-throat-legA').scrollIntoViewIfNeeded();
      await page.locator('[data-calculator="fillet-throat"][data-alive]').waitFor();
      expect(await page.locator('#fillet-throat-legA').inputValue()).toBe('9.5');
    }));

  it('names what it cannot use and never runs what a link brings', () =>
    visit(
      lesson(
        'booth.v=9&booth.leg=3/8in&booth.amps=1&booth.note=%3Cimg+src=x+onerror=alert(1)%3E&booth.current=1e9A',
      ),
      {},
      async ({ page, trouble, quiet }) => {
        const banner = page.getByRole('complementary', { name: 'Numbers of a booth' });
        await banner.getByText('Used in').waitFor();
        const said = await banner.textContent();
        expect(said).toContain('newer version');
        expect(said).toContain('booth.amps');
        expect(said).toContain('Current must be at most 550');
        expect(said).toContain('<img src=x onerror=alert(1)>');
        expect(await page.locator('main img').count()).toBe(0);
        await quiet();
        expect(trouble).toEqual([]);
      },
    ));

  it('takes the numbers along from a lesson that is gone', async () => {
    await visit(`${site.base}404.html?${booth}`, {}, async ({ page }) => {
      await page.getByRole('link', { name: 'Take the numbers along' }).click();
      await page.waitForURL(/\/booth\/\?/);
      await page.locator('#booth-leg').waitFor();
      expect(await page.locator('#booth-leg').inputValue()).toBe('3/8in');
    });
    await visit(`${site.base}404.html`, {}, async ({ page }) => {
      expect(await page.getByRole('link', { name: 'Take the numbers along' }).count()).toBe(0);
    });
  });

  it('changes nothing where there is no link', () =>
    visit(`${site.base}lessons/fillet-2f/`, {}, async ({ page, quiet }) => {
      await quiet();
      expect(await page.locator('main > div > aside').count()).toBe(0);
    }));
});

const exercises = [...site.files].flatMap(
  (file) => /exercises\/([a-z0-9-]+)\.json$/.exec(file)?.[1] ?? [],
);
const desk = (query: string) => `${site.base}booth/?${query}`;
const filled =
  'booth.current=130A&booth.thickness=1/2in&booth.leg=3/8in&booth.electrode=1/8in&booth.group=Evening+B';
const longNote = encodeURIComponent(
  'Go slowly at the root and wait for both plates to wet. '.repeat(3).slice(0, 140),
);

const ready = async (page: Page, count: number) => {
  await page.waitForFunction(
    (wanted) =>
      document.querySelectorAll('.booth-sheets > .booth-sheet').length === wanted &&
      [...document.querySelectorAll<HTMLElement>('.booth-sheets > .booth-sheet')].every(
        (sheet) => sheet.style.getPropertyValue('--size') !== '',
      ),
    count,
  );
};

describe('the sheets of a rotation', () => {
  const half = Math.ceil(exercises.length / 2);
  it.each([
    ['the first half of all exercises', exercises.slice(0, half), 'us'],
    ['the second half', exercises.slice(half), 'metric'],
  ] as const)('%s: one page each, on Letter and on A4', (_, slugs, units) => {
    const also = slugs.map(
      (slug) =>
        `also=${encodeURIComponent(`booth.exercise=${slug}&${filled}&booths=7&booth.note=${longNote}`)}`,
    );
    return visit(
      desk(`${also.join('&')}&units=${units}`),
      { width: 360 },
      async ({ page, quiet, trouble }) => {
        await ready(page, slugs.length);
        await quiet();
        for (const format of ['Letter', 'A4']) {
          const pdf = await PDFDocument.load(await page.pdf({ format }));
          expect(pdf.getPageCount(), format).toBe(slugs.length);
        }
        expect(trouble).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
          360,
        );
      },
    );
  });
});

/**
 * A phone's preview of 1920 pixels sees about 1270 mm from a meter away (common practice, no source):
 * 1.5 pixels a millimeter. Averaged down to that, with the quiet zone, and no more contrast than gray.
 */
async function readFrom(page: Page, selector: string, millimeters: number, meters: number) {
  const shot = PNG.sync.read(await page.locator(selector).first().screenshot());
  const size = Math.round((millimeters * 1.5) / meters);
  const data = new Uint8Array(size * size * 3);
  for (let y = 0; y < size; y++)
    for (let x = 0; x < size; x++) {
      const [left, right] = [x, x + 1].map((at) => Math.floor((at * shot.width) / size)) as [
        number,
        number,
      ];
      const [top, bottom] = [y, y + 1].map((at) => Math.floor((at * shot.height) / size)) as [
        number,
        number,
      ];
      let sum = 0;
      for (let v = top; v < bottom; v++)
        for (let u = left; u < right; u++) sum += shot.data[(v * shot.width + u) * 4] as number;
      const gray = 60 + (sum / ((bottom - top) * (right - left)) / 255) * 140;
      data.fill(gray, (y * size + x) * 3, (y * size + x) * 3 + 3);
    }
  return decodeQR({ width: size, height: size, data }, { timeLimit: 2000 });
}

describe('the code of a booth', () => {
  it('is read from a meter away on A5, and at arm’s length on the sheet', () =>
    visit(
      desk(`booth.exercise=fillet-2f&${filled}&booths=7&booth.note=Slow+down+at+the+root`),
      {},
      async ({ page }) => {
        await ready(page, 1);
        const link = (await page.locator('.booth-links a').first().getAttribute('href')) ?? '';
        // The address of a real site is longer than that of a test.
        expect(link.length).toBeGreaterThan(120);
        await page.setViewportSize({ width: 2200, height: 2200 });
        await page.emulateMedia({ media: 'print' });
        await page.evaluate(() => {
          for (const code of document.querySelectorAll<SVGElement>('.booth-code'))
            code.style.setProperty('width', '1200px', 'important');
        });
        expect(await readFrom(page, '.booth-sheets .booth-code', 44, 0.4)).toBe(link);
        await page.evaluate(() => document.body.classList.add('print-codes'));
        expect(await readFrom(page, '.booth-cards .booth-code', 128, 1)).toBe(link);
        const pdf = await PDFDocument.load(await page.pdf({ preferCSSPageSize: true }));
        expect(pdf.getPageCount()).toBe(1);
        // A5, in points.
        expect(Math.round(pdf.getPage(0).getWidth())).toBeCloseTo(420, -1);
      },
    ));
});

describe('the booth page', () => {
  it('makes a link that opens the lesson with what was set', () =>
    visit(desk('exercise=fillet-2f'), {}, async ({ page, trouble, quiet }) => {
      await ready(page, 1);
      await page.getByLabel('Fillet leg to reach').fill('3/8');
      await page.getByLabel('Current').fill('400');
      await page.getByText('allows 115 A to 140 A').waitFor();
      await page.getByLabel('Current').fill('130');
      await page.getByLabel('Booth or machine').fill('7-9');
      await page.getByRole('link', { name: /booth\.place=8/ }).click();
      await page.getByText('Numbers of booth 8').waitFor();
      await page.locator('aside').getByText('Used in').waitFor();
      await quiet();
      expect(trouble).toEqual([]);
    }));

  it('says where something is wrong and keeps the rest', () =>
    visit(
      desk('exercise=gone-long-ago&booth.leg=3/8in&booth.current=x&booths=9-3,7'),
      {},
      async ({ page, trouble }) => {
        await page.getByText('“gone-long-ago” is not on this site').waitFor();
        await page.getByText('Current needs a number, not “x”').waitFor();
        await page.getByText('Booths “9-3” run backward').waitFor();
        expect(await page.getByLabel('Fillet leg to reach').inputValue()).toBe('3/8in');
        await page.getByLabel('Exercise, or lesson alone').selectOption('exercise/fillet-2f');
        await ready(page, 1);
        await page.getByLabel('Bead width').fill('9e99');
        await page.getByText('Bead width must be at most').waitFor();
        expect(await page.getByLabel('Bead width').inputValue()).toBe('9e99');
        expect(trouble).toEqual([]);
      },
    ));
});

describe('an exercise on paper', () => {
  it('takes two sheets at most, Letter and A4 alike', async () => {
    for (const slug of exercises)
      await visit(`${site.base}exercises/${slug}/`, {}, async ({ page }) => {
        for (const format of ['Letter', 'A4']) {
          const pdf = await PDFDocument.load(await page.pdf({ format }));
          expect(pdf.getPageCount(), `${slug} ${format}`).toBeLessThanOrEqual(2);
        }
      });
  });
});

const grading = `${site.base}grading/?exercise=fillet-2f`;
const byEye = ['Cracks', 'Craters', 'Fusion', 'Porosity', 'Arc strikes'];

async function fill(page: Page, learner: string, legs: string) {
  await page.getByRole('button', { name: 'Add a coupon' }).click();
  await page.getByLabel('Learner, by number').fill(learner);
  await page.getByLabel(/^size/i).fill(legs);
  await page.getByLabel(/^legs/i).fill('1/32');
  await page.getByLabel(/^convexity/i).fill('1/16');
  await page.getByLabel(/^undercut/i).fill('0');
  for (const item of byEye) await page.getByLabel(new RegExp(`^${item}`, 'i')).selectOption('pass');
}
const result = (page: Page) => page.locator('.grading-result').textContent();
const saved = async (page: Page, button: string) => {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  return text(await file.createReadStream());
};
const open = (page: Page, table: string) =>
  page
    .getByLabel('Open a CSV')
    .setInputFiles({ name: 'class.csv', mimeType: 'text/csv', buffer: Buffer.from(table) });

describe('the grading sheet', () => {
  it('judges, keeps, hands out and takes back', () =>
    visit(grading, { width: 360 }, async ({ page, trouble }) => {
      await fill(page, '7', '5/16; 3/8');
      expect(await result(page)).toMatch(/Passed, 100 %/);
      await fill(page, '12', '1/4; 5/16');
      expect(await result(page)).toMatch(/Repeat, 89 %\. Missed: size/);

      const table = await saved(page, 'Save all as CSV');
      expect(table).toContain('fillet-2f,12,1,');
      const alone = await saved(page, 'Save this learner as CSV');
      expect(alone).not.toContain('fillet-2f,7,');
      const record = readKept(learnerRecord, await saved(page, 'Save for the learner’s record'));
      expect(record).toMatchObject({
        ok: true,
        data: { learner: '12', coupons: [{ exercise: 'fillet-2f', result: 'repeat' }] },
      });

      await page.getByRole('button', { name: 'Take this coupon out' }).click();
      expect(await page.getByRole('button', { name: '12', exact: true }).count()).toBe(0);
      await open(page, table);
      await page.getByText('2 coupons read').waitFor();
      await page.getByRole('button', { name: '12', exact: true }).click();
      expect(await page.getByLabel(/^size/i).inputValue()).toBe('1/4; 5/16');

      await open(page, 'name,mark\nx,1');
      await page.getByText('This table has no column').waitFor();
      expect(await page.getByLabel(/^size/i).inputValue()).toBe('1/4; 5/16');

      await page.reload();
      await page.getByRole('button', { name: '12', exact: true }).click();
      expect(await result(page)).toMatch(/Repeat/);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
        360,
      );
      expect(trouble).toEqual([]);
    }));

  it('never lets a looser limit pass without saying so', () =>
    visit(grading, {}, async ({ page, trouble }) => {
      await fill(page, '7', '5/16');
      await page.getByText('Rubric: weights').click();
      await page.locator('#grading-rubric-5-limit').fill('1/64');
      await page.locator('#grading-point-5').fill('1/32');
      expect(await result(page)).toMatch(/Missed: undercut/);
      await page.locator('#grading-rubric-5-limit').fill('1/8');
      await page.getByText('is looser than 1/32').locator('visible=true').first().waitFor();
      expect(await result(page)).toMatch(/Judged by looser limits than the source: undercut/);
      await page.locator('#grading-rubric-0-weight').fill('many');
      await page.getByText('Weight must be a number').waitFor();
      await page.getByRole('button', { name: 'Undo' }).click();
      expect(trouble).toEqual([]);
    }));

  it('says that it does not know an exercise, and prints two coupons on two sheets at most', async () => {
    await visit(`${site.base}grading/?exercise=gone`, {}, async ({ page, trouble }) => {
      await page.getByText('“gone” is not on this site').waitFor();
      expect(trouble).toEqual([]);
    });
    await visit(grading, {}, async ({ page }) => {
      await fill(page, '7', '5/16');
      await fill(page, '8', 'wide');
      expect(await result(page)).toMatch(/Still open: size/);
      for (const format of ['Letter', 'A4']) {
        const pdf = await PDFDocument.load(await page.pdf({ format }));
        expect(pdf.getPageCount(), format).toBeLessThanOrEqual(2);
      }
    });
  });
});
