/** An instructor plans a class and keeps its board. */
import { text } from 'node:stream/consumers';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { readCsv } from '../../lib/csv.ts';
import { writeFile } from '../../lib/files/file-kind.ts';
import { emptyRecord, learnerRecord } from '../../lib/files/learner-record.ts';
import { site } from '../site/built-site.ts';
import { visit } from './reader.ts';

const plan = `${site.base}class/`;
const opened = async (page: Page) => {
  await page.getByRole('heading', { name: 'Your plan' }).waitFor();
};
const hours = (page: Page) => page.locator('.plan-now').textContent();

/** Saves by a button and returns what lies in the file. */
async function saved(page: Page, button: string, at = 0): Promise<string> {
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: button, exact: true }).nth(at).click();
  return text(await (await coming).createReadStream());
}

describe('the class plan', () => {
  it('starts from the demo term, follows an edit, undoes it, and keeps it over a reload', () =>
    visit(plan, {}, async ({ page, trouble, quiet }) => {
      await opened(page);
      expect(await hours(page)).toContain('57 h 8 min a learner asked, 57 h 45 min there');
      await page.getByLabel('Evenings in the term').fill('20');
      expect(await hours(page)).toContain('Too full: 9 h a learner too many');
      await page.getByRole('button', { name: 'Undo' }).click();
      expect(await hours(page)).toContain('57 h 45 min there');
      await page.getByRole('button', { name: 'Do again' }).click();
      await page.reload();
      await opened(page);
      expect(await hours(page)).toContain('Too full');
      await quiet();
      expect(trouble).toEqual([]);
    }));

  it('says what is wrong by the box, keeps what was typed, and counts the rest', () =>
    visit(plan, {}, async ({ page }) => {
      await opened(page);
      const learners = page.getByLabel('Learners', { exact: true }).first();
      await learners.fill('0');
      expect(await learners.getAttribute('aria-invalid')).toBe('true');
      expect(await page.locator('#plan-learners-problem').textContent()).toContain(
        'Learners must be at least 1',
      );
      expect(await learners.inputValue()).toBe('0');
      await page.getByText('Stock and saw').click();
      await page.getByLabel('Length of a bar').fill('7.75');
      await page.getByText('is longer than a trimmed length').first().waitFor();
      await page.getByLabel('Evenings in the term').fill('9'.repeat(90));
      expect(await page.locator('#plan-evenings-problem').textContent()).not.toBe('');
      expect(await page.locator('#plan-weeks').textContent()).toContain('Sixteen straight beads');
    }));

  it('goes out to a file and comes back; a bad file changes nothing', () =>
    visit(plan, {}, async ({ page }) => {
      await opened(page);
      await page.getByLabel('Name of the plan').fill('Spring');
      const kept = await saved(page, 'Save to a file');
      await page.getByRole('button', { name: 'Start from the demo third term' }).click();
      expect(await page.locator('#plan-purchase').textContent()).toContain('NPS 6');
      const open = (content: string) =>
        page.locator('#open-class-plan').setInputFiles({
          name: 'plan.json',
          mimeType: 'application/json',
          buffer: Buffer.from(content),
        });
      await open(kept.slice(0, 400));
      await page.getByText('Nothing was changed.').waitFor();
      expect(await page.locator('#plan-purchase').textContent()).toContain('NPS 6');
      await open(kept);
      await page.getByText('Opened.').waitFor();
      expect(await page.getByLabel('Name of the plan').inputValue()).toBe('Spring');
    }));

  it('gives its lists as tables, in the reader’s units', () =>
    visit(`${plan}?units=metric`, {}, async ({ page }) => {
      await opened(page);
      const purchase = readCsv(await saved(page, 'As a table (CSV)'), ['what', 'buy', 'weight kg']);
      expect(purchase.ok && purchase.rows.some(({ what }) => what === 'E7018 3.2 mm')).toBe(true);
      const cut = readCsv(await saved(page, 'As a table (CSV)', 1), ['section', 'length mm']);
      expect(cut.ok && cut.rows.length > 0).toBe(true);
      const weeks = readCsv(await saved(page, 'As a table (CSV)', 2), ['week', 'exercise']);
      expect(weeks.ok && weeks.rows.some(({ exercise }) => exercise === 'flat-bead')).toBe(true);
    }));

  it('prints a list alone, on one page of Letter', () =>
    visit(plan, {}, async ({ page }) => {
      await opened(page);
      await page.evaluate(() => {
        document.documentElement.dataset.only = 'purchase';
      });
      const pdf = await page.pdf({ format: 'Letter', preferCSSPageSize: true });
      expect(pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g)).toHaveLength(1);
    }));

  it('answers a key within a tenth of a second for forty learners and every exercise', () =>
    visit(plan, {}, async ({ page }) => {
      await opened(page);
      for (const box of await page.locator('.plan-pick input').all()) await box.check();
      const took = await page.evaluate(() => {
        const box = document.querySelector<HTMLInputElement>('#plan-learners');
        if (!box) return [Number.POSITIVE_INFINITY];
        return ['40', '39', '38', '37', '36', '35', '34'].map((text) => {
          const start = performance.now();
          box.value = text;
          box.dispatchEvent(new InputEvent('input', { bubbles: true }));
          return performance.now() - start;
        });
      });
      const [, , , middle = Number.POSITIVE_INFINITY] = took.sort((a, b) => a - b);
      expect(middle).toBeLessThan(100);
    }));
});

describe('the class board', () => {
  const board = `${site.base}board/`;
  const ready = (page: Page) => page.getByRole('heading', { name: 'Your board' }).waitFor();

  it('puts a learner on, writes down a coupon and an absence, and keeps them over a reload', () =>
    visit(board, {}, async ({ page, trouble, quiet }) => {
      await ready(page);
      await page.getByLabel('New learner').fill('ZZ');
      await page.getByRole('button', { name: 'Put on the board' }).click();
      await page.getByRole('button', { name: 'Write down about ZZ' }).click();
      await page.getByLabel('Handed in today of ZZ').selectOption('fillet-2f');
      await page.getByRole('button', { name: 'Add the coupon' }).click();
      await page.getByLabel('Minutes missed of ZZ').fill('90');
      await page.getByRole('button', { name: 'Add the absence' }).click();
      await page.reload();
      await ready(page);
      const sheets = (await page.locator('.board-sheet').allTextContents()).join(' ');
      expect(sheets).toContain('ZZ');
      expect(sheets).toContain('1 h 30 min');
      await quiet();
      expect(trouble).toEqual([]);
    }));

  it('takes good records, tells bad ones and bad tables, and loses nothing', () =>
    visit(board, {}, async ({ page }) => {
      await ready(page);
      const record = (learner: string) =>
        writeFile(
          learnerRecord,
          {
            ...emptyRecord(),
            learner,
            coupons: [
              {
                exercise: 'groove-1g',
                on: '2026-03-03',
                result: 'waiting',
                readings: [],
                grader: '',
                note: '',
              },
            ],
          },
          '2026-03-03',
        );
      const file = (name: string, content: string) => ({
        name,
        mimeType: 'application/json',
        buffer: Buffer.from(content),
      });
      await page
        .locator('#board-records')
        .setInputFiles([
          file('good.json', record('Q7')),
          file('none.json', record('')),
          file('torn.json', record('Q8').slice(0, 60)),
        ]);
      await page.getByText('1 of 3 records taken over.').waitFor();
      const told = await page.getByRole('alert').first().textContent();
      expect(told).toContain('none.json: this record has no learner number');
      expect(told).toContain('torn.json: This file is damaged');
      await page.locator('#board-table').setInputFiles(file('list.csv', 'name,grade\r\nx,1'));
      await page.getByText('Nothing was changed.').waitFor();
      expect(await page.getByRole('alert').first().textContent()).toContain('no column "learner"');
      const where = await page.locator('[aria-labelledby="board-where"]').textContent();
      expect(where).toContain('Q7');
      expect(where).toContain('KJ');
    }));

  it('tells the class plan how many learners an exercise still has before it', () =>
    visit(board, {}, async ({ page }) => {
      await ready(page);
      await page.getByRole('button', { name: 'Show the demo class' }).click();
      await page.goto(plan);
      await opened(page);
      await page.getByRole('button', { name: 'Count learners from the class board' }).click();
      // AB is past it; 1 and 11 are at it; everybody else has it before them.
      expect(await page.locator('#plan-fillet-3f-stringers-learners').inputValue()).toBe('15');
      expect(await page.locator('#plan-safety-gate-learners').inputValue()).toBe('0');
    }));
});
