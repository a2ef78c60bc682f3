/** Each sheet of the site as a PDF, on Letter and on A4. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { filletPicture, filletSampleMarks } from '../../lib/section/sample-fillet.ts';
import { site } from '../site/built-site.ts';
import { lostWithoutColor, printed } from './printed.ts';
import { visit } from './reader.ts';

interface Sheet {
  path: string;
  /** At most so many pages, so that nobody prints a book by mistake. */
  pages: number;
  /** Brings the sheet about; the page as it opens when left out. */
  make?: (page: Page) => Promise<unknown>;
}

const alone = (list: string) => async (page: Page) => {
  await page.getByRole('heading', { name: 'Your plan' }).waitFor();
  await page.evaluate((list) => {
    document.documentElement.dataset.only = list;
  }, list);
};

/** Marks the sample from one end of its ruler to the last edge of the melted metal. */
async function measureTheSample(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Try it on the sample fillet' }).click();
  const frame = page.locator('.section-frame');
  await frame.scrollIntoViewIfNeeded();
  const { width, height } = (await frame.boundingBox()) ?? { width: 0, height: 0 };
  const { width: across, height: down } = filletPicture;
  const zoom = Math.min(width / across, height / down);
  for (const name of ['ends', 'root', 'toeA', 'toeB', 'face', 'fusion'] as const) {
    if (name === 'fusion')
      await page.getByRole('button', { name: /^Edge of the melted metal/ }).click();
    for (const [x, y] of filletSampleMarks[name])
      await frame.click({
        position: { x: width / 2 + (x - across / 2) * zoom, y: height / 2 + (y - down / 2) * zoom },
      });
  }
  await page
    .getByRole('row', { name: /^Theoretical throat/ })
    .first()
    .waitFor();
}

const sheets: Record<string, Sheet> = {
  'longest lesson handout': { path: 'lessons/groove-1g/', pages: 5 },
  'lesson handout of two leaves': { path: 'lessons/fillet-2f/', pages: 4 },
  'booth sheet': {
    path: 'booth/?booth.exercise=fillet-2f&booth.current=128A',
    pages: 1,
    make: (page) => page.locator('.booth-sheet .booth-code').first().waitFor({ state: 'attached' }),
  },
  'electrode log': { path: 'log/', pages: 2 },
  'purchase list': { path: 'class/', pages: 1, make: alone('purchase') },
  'cut list': { path: 'class/', pages: 3, make: alone('cut') },
  'week plan': { path: 'class/', pages: 2, make: alone('weeks') },
  'class plan': {
    path: 'class/',
    pages: 8,
    make: (page) => page.getByRole('heading', { name: 'Your plan' }).waitFor(),
  },
  'class board': {
    path: 'board/',
    pages: 3,
    make: async (page) => {
      await page.getByRole('button', { name: 'Show the demo class' }).click();
    },
  },
  'audit report': { path: 'audit/report/', pages: 8 },
  'audit: where each skill is practiced': { path: 'audit/coverage/', pages: 5 },
  'audit: what is accepted': { path: 'audit/acceptance/', pages: 13 },
  'how to measure a section': { path: 'section/', pages: 5 },
  'section report': { path: 'section/', pages: 3, make: measureTheSample },
  'problem set and key': {
    path: 'practice/?lesson=flat-bead&set=77&count=30&units=us',
    pages: 9,
    make: (page) => page.getByRole('heading', { name: 'Answer key, set 77' }).waitFor(),
  },
  'test-day sheet': {
    path: 'test-sheet/?sheet.code=AWS+D1.1&sheet.test=3G',
    pages: 2,
    make: (page) => page.locator('#sheet-day').waitFor(),
  },
  "learner's record": { path: 'record/', pages: 1 },
  'grading sheet': {
    path: 'grading/?exercise=fillet-2f',
    pages: 2,
    make: async (page) => {
      await page.getByRole('button', { name: 'Add a coupon' }).click();
      await page.getByLabel(/^size/i).fill('1/4; 5/16');
    },
  },
};

describe('cuts no row, drawing or heading, leaves no heading alone, and needs no color', () => {
  it.each(Object.entries(sheets))('%s', async (_, { path, pages, make }) => {
    await visit(site.base + path, {}, async ({ page, quiet }) => {
      await make?.(page);
      await quiet();
      for (const format of ['Letter', 'A4'] as const) {
        const paper = await printed(page, format);
        expect.soft(paper, format).toEqual({ pages: expect.any(Number), cut: [], alone: [] });
        expect.soft(paper.pages, format).toBeLessThanOrEqual(pages);
      }
      expect(await lostWithoutColor(page)).toEqual([]);
    });
  });
});

it('sees a row that is cut', () =>
  visit(`${site.base}audit/hours/`, {}, async ({ page }) => {
    await page.evaluate(() => {
      for (const row of document.querySelectorAll('tr')) row.style.breakInside = 'auto';
      for (const cell of document.querySelectorAll('td:nth-of-type(1)'))
        cell.append(
          ...Array.from({ length: 9 }, () => [
            document.createElement('br'),
            'one more line',
          ]).flat(),
        );
    });
    expect((await printed(page, 'Letter')).cut[0]).toMatch(/^TR \d+ on pages \d+, \d+$/);
  }));
