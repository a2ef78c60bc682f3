import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { site } from '../site/built-site.ts';
import { visit } from './reader.ts';

const page = (id: string) => `${site.base}calculators/${id}/`;
const alive = (page: Page) => page.waitForSelector('[data-alive]');
const clockField = (page: Page) => page.locator('#pipe-position-clockAngle').inputValue();
const handles = (page: Page) => page.locator('.handle input[type=range]:visible');

describe('the clock of a pipe', () => {
  it('is turned with the arrow keys, and the form follows', async () => {
    await visit(page('pipe-position'), { width: 360 }, async ({ page, trouble }) => {
      await alive(page);
      await handles(page).first().focus();
      await page.keyboard.press('ArrowRight');
      expect(await clockField(page)).toBe('125');
      await expect.poll(() => page.locator('.handle b').first().textContent()).toContain('4:10');
      expect(trouble).toEqual([]);
    });
  });

  it('is turned by dragging its knob', async () => {
    await visit(page('pipe-position'), { width: 360 }, async ({ page }) => {
      await alive(page);
      const dial = page.locator('.dial-knob:visible');
      await dial.scrollIntoViewIfNeeded();
      const [knob, sheet] = [
        await dial.boundingBox(),
        await page.locator('svg.sketch:visible').boundingBox(),
      ];
      if (!knob || !sheet) expect.fail('no dial');
      const unit = sheet.width / 320;
      await page.mouse.move(knob.x + knob.width / 2, knob.y + knob.height / 2);
      await page.mouse.down();
      // To nine o'clock.
      await page.mouse.move(sheet.x + 80 * unit, sheet.y + 152 * unit, { steps: 8 });
      await page.mouse.up();
      expect(await clockField(page)).toBe('270');
    });
  });

  it('follows the form, and leaves it as typed', async () => {
    await visit(page('pipe-position'), {}, async ({ page }) => {
      await alive(page);
      await page.locator('#pipe-position-clockAngle').fill('92.5');
      await expect.poll(() => page.locator('.handle b').first().textContent()).toContain('3:05');
      expect(await clockField(page)).toBe('92.5');
    });
  });
});

describe('the passes of a joint', () => {
  it('are run one at a time by the handle', async () => {
    await visit(page('groove-passes'), { width: 360 }, async ({ page }) => {
      await alive(page);
      const metal = page.locator('svg.sketch:visible .weld-metal');
      const all = await metal.count();
      await handles(page).first().focus();
      await page.keyboard.press('Home');
      await expect.poll(() => metal.count()).toBe(1);
      await page.keyboard.press('ArrowRight');
      await expect.poll(() => metal.count()).toBe(2);
      await page.keyboard.press('End');
      await expect.poll(() => metal.count()).toBe(all);
    });
  });

  it('show no handle before there are scripts', async () => {
    await visit(page('groove-passes'), { scripts: false }, async ({ page }) => {
      expect(await page.locator('.handle:visible').count()).toBe(0);
    });
  });
});
