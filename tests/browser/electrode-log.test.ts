/** An evening with the electrode log: opened, warned, returned, written down late, saved, printed. */
import { text } from 'node:stream/consumers';
import axe from 'axe-core';
import { PDFDocument } from 'pdf-lib';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { electrodeLog } from '../../lib/files/electrode-log.ts';
import { readFile } from '../../lib/files/file-kind.ts';
import { site } from '../site/built-site.ts';
import { type Visit, visit } from './reader.ts';

const path = `${site.base}log/`;
const pages = async (page: Page, format: 'Letter' | 'A4') =>
  (await PDFDocument.load(await page.pdf({ format }))).getPageCount();

/** The page's clock shows another time, as after a phone's sleep. */
async function clockAt(page: Page, instant: string) {
  await page.clock.setFixedTime(instant);
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
}

/** The page in New York at an instant, and a way to press its buttons. */
const inNewYork = (
  instant: string,
  look: (visit: Visit, press: (name: string | RegExp) => Promise<void>) => Promise<void>,
) =>
  visit(path, { width: 360 }, async (opened) => {
    const { page } = opened;
    const devtools = await page.context().newCDPSession(page);
    await devtools.send('Emulation.setTimezoneOverride', { timezoneId: 'America/New_York' });
    try {
      await page.clock.setFixedTime(instant);
      await page.reload();
      await look(opened, (name) => page.getByRole('button', { name }).click());
    } finally {
      await devtools.send('Emulation.setTimezoneOverride', { timezoneId: '' });
      await devtools.detach();
    }
  });

async function saved(page: Page, button: string): Promise<string> {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  return text(await file.createReadStream());
}

const faults = async (page: Page, only?: string[]) => {
  await page.evaluate(axe.source);
  const found = await page.evaluate(
    (rules) => (window as never as { axe: typeof axe }).axe.run(rules ? { runOnly: rules } : {}),
    only,
  );
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
};

describe('the electrode log', () => {
  it('is kept through an evening in New York, past midnight', () =>
    // 18:00 there.
    inNewYork('2026-03-26T22:00Z', async ({ page, trouble, quiet }, press) => {
      await page.locator('#log-new-name').fill('Can 3, lot 17A');
      await press('Put it in the log');
      await press(/^Opened now/);
      const card = page.locator('#log-1');
      await card.getByText('have them back in the oven by 22:00').waitFor();
      expect(await page.locator('.log-warnings p').count()).toBe(0);

      await clockAt(page, '2026-03-27T01:30Z');
      const warning = page.locator('.log-warnings');
      await warning.getByText('Can 3, lot 17A').waitFor();
      expect(await warning.textContent()).toBe(
        'Can 3, lot 17A: soonUse them, or have them back in the oven by 22:00.',
      );

      expect(await page.title()).toMatch(/^\(1\) Electrode log/);
      await press(/^Returned now/);
      await page.getByText('Oven temperature is empty.').waitFor();
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('log-oven');
      await page.keyboard.type('275');
      await press(/^Returned now/);
      await card.getByText('In the oven, holding').waitFor();
      expect(await warning.textContent()).toBe('');

      // 1:40; what was forgotten at 23:50 is written down, and the day is a slip.
      await clockAt(page, '2026-03-27T05:40Z');
      await press(/^Open the log/);
      await page.locator('#log-1-row-time').fill('23:50');
      await press('Write it down');
      await card.getByText('Time 23:50 on 2026-03-27 is still to come').waitFor();
      await press('It was the day before');
      await card.getByText('2026-03-26, 23:50: issued').waitFor();
      await card.getByText('Out too long', { exact: true }).waitFor();
      await press('Undo');
      await card.getByText('May be issued at any time').waitFor();
      await press('Do again');
      await card.getByText('Out too long', { exact: true }).waitFor();

      const file = await saved(page, 'Save to a file');
      const read = readFile(electrodeLog, file);
      expect(read.ok && read.data).toMatchObject({
        zone: 'America/New_York',
        holders: [{ name: 'Can 3, lot 17A', rows: [{ event: 'opened' }, {}, { event: 'out' }] }],
      });
      expect(await saved(page, 'As a table (CSV)')).toContain(
        '2026-03-26,21:30,America/New_York,2026-03-27T01:30Z,returned to the oven,275,°F',
      );
      const open = (content: string) =>
        page.locator('#open-electrode-log').setInputFiles({
          name: 'log.json',
          mimeType: 'application/json',
          buffer: Buffer.from(content),
        });
      await open(file.slice(0, 100));
      await page.getByText('Nothing was changed').waitFor();
      expect(await card.count()).toBe(1);
      await press('Start empty');
      await press('Yes, start empty');
      await expect.poll(() => card.count()).toBe(0);
      await open(file);
      await card.getByText('Out too long', { exact: true }).waitFor();
      await page.reload();
      await card.getByText('Out too long', { exact: true }).waitFor();
      await quiet();
      expect(trouble).toEqual([]);
    }));

  it('asks which one where an hour comes twice, and says where one is left out', () =>
    // 2:10 in the night on which clocks go back.
    inNewYork('2026-11-01T07:10Z', async ({ page }, press) => {
      await page.locator('#log-new-name').fill('Quiver booth 4');
      await press('Put it in the log');
      await press(/^Open the log/);
      const card = page.locator('#log-1');
      await page.locator('#log-1-row-time').fill('01:30');
      await press('Write it down');
      await card.getByText('1:30 comes twice on 2026-11-01').waitFor();
      const which = page.locator('#log-1-row-which');
      expect(await which.getAttribute('aria-invalid')).toBe('true');
      await which.selectOption('the second time (EST)');
      await press('Write it down');
      await card.getByText('2026-11-01, 1:30 EST: opened').waitFor();
      await card.getByText('Clock 40 min of 4 h').waitFor();
      await page.locator('#log-1-row-day').fill('2026-03-08');
      await page.locator('#log-1-row-time').fill('02:30');
      await press('Write it down');
      await card.getByText('clocks go from 2:00 to 3:00').waitFor();
    }));

  it('reads well to everyone on a phone', () =>
    visit(path, { width: 360 }, async ({ page }) => {
      await page.getByRole('button', { name: 'Show an example evening' }).click();
      await page.getByRole('button', { name: 'Open the log of Quiver booth 7' }).click();
      expect(await faults(page)).toEqual([]);
      await page.emulateMedia({ colorScheme: 'dark' });
      expect(await faults(page, ['color-contrast'])).toEqual([]);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide).toBeLessThanOrEqual(360);
    }));

  it('prints an evening on one sheet, and a blank sheet without scripts', async () => {
    await visit(path, {}, async ({ page }) => {
      await page.getByRole('button', { name: 'Show an example evening' }).click();
      await page.locator('.log-sheet').getByText('back by 22:00').waitFor();
      for (const format of ['Letter', 'A4'] as const) expect(await pages(page, format)).toBe(1);
    });
    await visit(path, { scripts: false }, async ({ page }) => {
      expect(await page.locator('.log-ruled').count()).toBe(18);
      for (const format of ['Letter', 'A4'] as const) expect(await pages(page, format)).toBe(1);
    });
  });
});
