/** A learner's record: files good and bad, the day's problems, what is not met, a browser that keeps nothing. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { addDays } from '../../lib/calendar.ts';
import { writeFile } from '../../lib/files/file-kind.ts';
import { emptyRecord, type LearnerRecord, learnerRecord } from '../../lib/files/learner-record.ts';
import { site } from '../site/built-site.ts';
import { visit } from './reader.ts';

const address = `${site.base}record/`;
const now = new Date();
const today = `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
const before = (days: number) => addDays(today, -days);
const file = (record: Partial<LearnerRecord>) =>
  writeFile(learnerRecord, { ...emptyRecord(), ...record }, today);

/** Opens the page again with this record in the browser. */
async function withRecord(page: Page, record: Partial<LearnerRecord>): Promise<void> {
  await page.evaluate(
    (text) => localStorage.setItem('sixteenths.learner-record', text),
    file(record),
  );
  await page.reload();
}
const read = (page: Page) => page.getByRole('heading', { name: 'Lessons read' }).locator('+ p');

it('a record file is added when it is good, and refused with a sentence when it is not', () =>
  visit(address, { width: 360 }, async ({ page, trouble }) => {
    await withRecord(page, {
      learner: 'Q7',
      lessonsRead: [{ lesson: 'flat-bead', on: before(3) }],
    });
    const choose = (content: string) =>
      page.locator('#open-learner-record').setInputFiles({
        name: 'record.json',
        mimeType: 'application/json',
        buffer: Buffer.from(content),
      });
    const good = file({ learner: 'Q7', lessonsRead: [{ lesson: 'fillet-2f', on: before(1) }] });
    const bad: [content: string, said: RegExp][] = [
      [good.slice(0, 80), /damaged.*Nothing was changed/],
      ['{"weld":1}', /not saved by this site.*Nothing was changed/],
      [good.replace('learner-record', 'class-plan'), /not a learner’s record.*Nothing was changed/],
      [good.replace('"version": 1', '"version": 99'), /newer version.*Nothing was changed/],
      [good.replace('fillet-2f', 'FILLET 2F'), /does not fit.*Nothing was changed/],
    ];
    for (const [content, said] of bad) {
      await choose(content);
      await expect
        .poll(() => page.locator('.file-buttons [role=status]').textContent())
        .toMatch(said);
      expect(await read(page).textContent()).toBe('The first straight bead');
    }
    await choose(good);
    await expect.poll(() => read(page).textContent()).toMatch(/; /);
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await read(page).textContent()).toBe('The first straight bead');
    expect(trouble).toEqual([]);
  }));

it('the day’s round takes lessons in turn, waits as long as the reader does, and comes back by the rule', () =>
  visit(address, { width: 360 }, async ({ page, trouble }) => {
    const lessonsRead = ['flat-bead', 'arc-length-clinic'].map((lesson) => ({
      lesson,
      on: before(4),
    }));
    await withRecord(page, { lessonsRead: [...lessonsRead, { lesson: 'groove-1g', on: today }] });
    const begin = page.getByRole('button', { name: /^Take up \d problems?/ });
    const count = Number(/\d/.exec((await begin.textContent()) ?? '')?.[0]);
    expect(count).toBeGreaterThan(2);
    await begin.click();
    const titles: string[] = [];
    for (let at = 0; at < count; at++) {
      const place = page.locator('.practice > .quiet').first();
      await expect.poll(() => place.textContent()).toMatch(new RegExp(`^${at + 1} of ${count}`));
      titles.push((await place.textContent()) ?? '');
      const hint = page.locator('.practice form button[type=button]').first();
      if (at === 0) {
        // Nothing moves while the reader thinks.
        const shown = await page.locator('.practice').textContent();
        await page.waitForTimeout(1100);
        expect(await page.locator('.practice').textContent()).toBe(shown);
      }
      for (let told = 0; told < 3; told++) await hint.click();
      await page
        .getByRole('button', { name: at === count - 1 ? 'End the round' : 'Next problem' })
        .click();
    }
    expect(new Set(titles).size).toBe(count);
    const ofClinic = titles.map((title) => /Arc length/.test(title));
    expect(ofClinic.slice(0, 4)).toEqual(
      ofClinic[0] ? [true, false, true, false] : [false, true, false, true],
    );
    // Each was shown, so each comes back tomorrow and none today.
    await expect.poll(() => page.getByText('No problems to take up today').count()).toBe(1);
    const kept = await page.evaluate(
      () => JSON.parse(localStorage.getItem('sixteenths.learner-record') ?? '{}').data,
    );
    expect(kept.problems).toHaveLength(count);
    await withRecord(page, {
      ...kept,
      problems: kept.problems.map((one: object) => ({ ...one, on: before(1) })),
    });
    await expect.poll(() => begin.count()).toBe(1);
    await withRecord(page, {
      ...kept,
      problems: kept.problems.map((one: object) => ({ ...one, on: before(1), solved: true })),
    });
    await expect.poll(() => page.getByText('No problems to take up today').count()).toBe(1);
    expect(trouble).toEqual([]);
  }));

it('a coupon to be repeated names what was not met, and the record says so until it is', () =>
  visit(address, { width: 360 }, async ({ page, trouble }) => {
    await page.getByLabel('Exercise').selectOption('fillet-2f');
    await page.getByLabel('Result').selectOption('repeat');
    await page.getByLabel('Graded by').fill('TL');
    await page.getByRole('checkbox', { name: 'undercut' }).check();
    await page.getByRole('button', { name: 'Put it in' }).click();
    await page.getByText(`Not met in the coupon of ${today}: undercut.`).waitFor();
    await page.getByLabel('Result').selectOption('passed');
    await page.getByRole('button', { name: 'Put it in' }).click();
    await page.getByText('2 more passes in a row').waitFor();
    expect(await page.getByText('Not met in the coupon').count()).toBe(0);
    expect(trouble).toEqual([]);
  }));

describe('a browser that keeps nothing', () => {
  it('says so under the self-check, and the tick stands', () =>
    visit(`${site.base}exercises/fillet-2f/`, { width: 360 }, async ({ page }) => {
      await page.evaluate(() => {
        Storage.prototype.setItem = () => {
          throw new DOMException('full', 'QuotaExceededError');
        };
      });
      const box = page.locator('.self-check input').first();
      await box.check();
      await expect
        .poll(() => page.locator('.self-check [role=status]').textContent())
        .toMatch(/no room left.*until you leave it/);
      expect(await box.isChecked()).toBe(true);
    }));
});
