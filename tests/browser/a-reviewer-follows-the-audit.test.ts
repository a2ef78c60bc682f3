/** A reviewer's way: from the verdict to the sentence, and an outline of his own beside the course. */
import { describe, expect, it } from 'vitest';
import { site } from '../site/built-site.ts';
import { visit } from './reader.ts';

const at = (path: string) => site.base + path.slice(1);
const table = (name: string, text: string) => ({
  name,
  mimeType: 'text/csv',
  buffer: Buffer.from(text),
});

describe('from the verdict', () => {
  it('two links lead to the sentence in the lesson, and it is in view', async () => {
    await visit(at('/audit/'), { width: 360 }, async ({ page, trouble }) => {
      await page.locator('a[href$="/audit/rules/needs-come-first/"]').click();
      await page.waitForURL('**/needs-come-first/');
      const link = page.getByRole('link', {
        name: /^“The first straight bead” needs “connect leads”/,
      });
      const sentence = new URL((await link.getAttribute('href')) ?? '', page.url()).hash;
      const words = decodeURIComponent(sentence.split(':~:text=')[1] ?? '');
      expect(words.split(' ').length).toBeGreaterThan(3);
      await link.click();
      await page.waitForURL('**/lessons/flat-bead/**');
      const found = page.locator('#needs-first dd', { hasText: words });
      expect(await found.count()).toBe(1);
      await expect
        .poll(() =>
          found.evaluate((it) => {
            const { top, bottom } = it.getBoundingClientRect();
            return top >= 0 && bottom <= innerHeight;
          }),
        )
        .toBe(true);
      expect(trouble).toEqual([]);
    });
  });
});

describe('an outline of his own', () => {
  it('is loaded, mapped, kept over a reload, and can be taken away', async () => {
    await visit(at('/audit/your-outline/'), { width: 360 }, async ({ page, trouble }) => {
      await page
        .getByLabel('Your outline, as a CSV table')
        .setInputFiles(table('shop.csv', 'code;topic\nA;Overhead plate test\nB;<b>Brazing</b>\n'));
      await page.getByText('2 topics: 0 served, 2 open.').waitFor();
      expect(await page.locator('.topics b', { hasText: 'Brazing' }).count()).toBe(0);
      const [first] = await page.getByLabel('Add a lesson that serves this topic').all();
      const likely = await first
        ?.locator('optgroup[label="By its words"] option')
        .allTextContents();
      expect(likely?.some((title) => title.includes('The overhead plate test'))).toBe(true);
      await first?.selectOption('groove-4g');
      await page.getByText('2 topics: 1 served, 1 open.').waitFor();
      await page.reload();
      await page.getByText('2 topics: 1 served, 1 open.').waitFor();
      await page.getByRole('button', { name: 'Take The overhead plate test away' }).click();
      await page.getByText('2 topics: 0 served, 2 open.').waitFor();
      await page.getByRole('button', { name: 'Take it away', exact: true }).click();
      await page.getByRole('button', { name: 'Yes, take it away' }).click();
      await page.getByText('2 topics').waitFor({ state: 'detached' });
      expect(trouble).toEqual([]);
    });
  });

  it('that cannot be read is refused by a sentence beside the field, and what was there stays', async () => {
    await visit(at('/audit/your-outline/'), {}, async ({ page, trouble }) => {
      const field = page.getByLabel('Your outline, as a CSV table');
      await field.setInputFiles(table('good.csv', 'topic\nSafety\n'));
      await page.getByText('1 topic: 0 served, 1 open.').waitFor();
      await field.setInputFiles(table('wrong.csv', 'name,hours\nSafety,3\n'));
      await page.getByText(/wrong\.csv: This table has no column "topic"/).waitFor();
      expect(await field.getAttribute('aria-describedby')).toBe('outline-problem');
      expect(await field.getAttribute('aria-invalid')).toBe('true');
      expect(await page.getByText('1 topic: 0 served, 1 open.').count()).toBe(1);
      expect(trouble).toEqual([]);
    });
  });

  it('is explained, with the lessons to write beside, where scripts are off', async () => {
    await visit(at('/audit/your-outline/'), { scripts: false }, async ({ page }) => {
      expect(await page.getByLabel('Your outline, as a CSV table').isVisible()).toBe(false);
      expect(await page.getByText('scripts are switched off here').isVisible()).toBe(true);
      expect(await page.getByRole('link', { name: 'Test day' }).isVisible()).toBe(true);
    });
  });
});

describe('the check page', () => {
  it('shows the values of one source, one mark and one difference, and counts them', async () => {
    await visit(at('/audit/checks/'), {}, async ({ page, trouble }) => {
      const rows = page.locator('tbody tr:visible');
      const all = await rows.count();
      await page.getByLabel('Source').selectOption({ label: 'AWS A5.1' });
      const some = await rows.count();
      expect(some).toBeGreaterThan(0);
      expect(some).toBeLessThan(all);
      await page.getByLabel('Difference').selectOption({ label: 'disagrees' });
      await page.getByText('0 values in 0 calculations').waitFor();
      await page.getByLabel('Difference').selectOption({ label: 'All' });
      await page.getByLabel('Source').selectOption({ label: 'All' });
      await page.getByLabel('Calculation').selectOption('heat-input');
      expect(await rows.count()).toBe(1);
      expect(trouble).toEqual([]);
    });
  });

  it('lists the calculations by source where scripts are off', async () => {
    await visit(at('/audit/checks/'), { scripts: false }, async ({ page }) => {
      expect(await page.getByLabel('Source').isVisible()).toBe(false);
      const first = page.locator('details dd a').first();
      expect(await first.isVisible()).toBe(true);
    });
  });
});
