/** The test-day sheet: chosen, kept in the address, printed on one side each, blank without scripts. */
import axe from 'axe-core';
import { PDFDocument } from 'pdf-lib';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { site } from '../site/built-site.ts';
import { visit } from './reader.ts';

const path = `${site.base}test-sheet/`;
const pages = async (page: Page, format: 'Letter' | 'A4') =>
  (await PDFDocument.load(await page.pdf({ format }))).getPageCount();
/** The longest that people bring: two fillers, six specimens, an open root. */
const longest =
  '?sheet.code=ASME+IX&sheet.test=2G%2B5G&sheet.form=pipe&sheet.nps=6&sheet.schedule=80' +
  '&sheet.deposits=E6010|1/8+in|1|without+backing|uphill&sheet.deposits=E7018|0.307+in|4|with+backing|uphill' +
  '&sheet.strap=3/8+in&sheet.plunger=1-1/2+in&sheet.day=2026-03-02';

describe('the test-day sheet', () => {
  it.each(['us', 'metric'] as const)('prints two sides of Letter and of A4 in %s', (units) =>
    visit(path, { units }, async ({ page, trouble, quiet }) => {
      await page.locator('#sheet-test').selectOption('6G');
      expect(await page.getByRole('row', { name: 'Not answered' }).textContent()).toContain(
        '6G on plate has no row',
      );
      await page.locator('#sheet-form').selectOption('pipe');
      await page.locator('#sheet-thickness').fill('');
      await page.locator('#sheet-nps').selectOption('2');
      await page.locator('#sheet-schedule').selectOption('80');
      await page.locator('#sheet-day').fill('2026-03-02');
      await page.getByText('good through 2026-09-02').first().waitFor();
      expect(page.url()).toContain('sheet.nps=2');
      for (const format of ['Letter', 'A4'] as const) expect(await pages(page, format)).toBe(2);
      await page.reload();
      await page.locator('#sheet-day').waitFor();
      expect(await page.locator('#sheet-day').inputValue()).toBe('2026-03-02');
      await quiet();
      expect(trouble).toEqual([]);
    }),
  );

  it('keeps each sheet to its side where it is fullest', () =>
    visit(`${path}${longest}`, {}, async ({ page }) => {
      await page.locator('.test-record').getByText('5G side bend 4').waitFor();
      for (const format of ['Letter', 'A4'] as const) expect(await pages(page, format)).toBe(2);
    }));

  it.each(['light', 'dark'] as const)('reads well to everyone, in %s', (theme) =>
    visit(path, { theme, width: 360 }, async ({ page }) => {
      await page.locator('#sheet-test').waitFor();
      await page.evaluate(axe.source);
      const found = await page.evaluate(() => (window as never as { axe: typeof axe }).axe.run());
      expect(found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide).toBeLessThanOrEqual(360);
    }),
  );

  it('is a blank record on one side without scripts', () =>
    visit(path, { scripts: false }, async ({ page }) => {
      expect(await page.locator('.test-record').textContent()).toContain(
        'This is a draft until a qualified person signs it.',
      );
      for (const format of ['Letter', 'A4'] as const) expect(await pages(page, format)).toBe(1);
    }));
});

describe('the safety gate on paper', () => {
  it('has a line for each who signs', () =>
    visit(`${site.base}exercises/safety-gate/`, {}, async ({ page }) => {
      const lines = page.locator('.signatures dt');
      expect(await lines.first().isVisible()).toBe(false);
      await page.emulateMedia({ media: 'print' });
      expect(await lines.allTextContents()).toEqual([
        'Both sides of this sheet, “The safety gate”, answered and seen',
        'Learner, number and signature',
        'Instructor, signature',
        'Date',
      ]);
      expect(await lines.first().isVisible()).toBe(true);
    }));
});
