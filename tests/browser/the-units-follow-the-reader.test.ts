import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { site } from '../site/built-site.ts';
import { visit } from './reader.ts';

const exercise = `${site.base}exercises/flat-bead/`;
const calculator = `${site.base}calculators/heat-input/`;
const units = (page: Page) => page.evaluate(() => document.documentElement.dataset.units);
const choose = (page: Page, name: 'inch' | 'metric') => page.getByLabel(name).first().check();

describe('the choice of units', () => {
  it('is inches for a reader who has chosen nothing', async () => {
    expect(await visit(exercise, {}, ({ page }) => units(page))).toBe('us');
  });

  it('is remembered on the next page', async () => {
    await visit(exercise, {}, async ({ page }) => {
      await choose(page, 'metric');
      await page.goto(calculator);
      expect(await units(page)).toBe('metric');
      expect(await page.getByLabel('metric').first().isChecked()).toBe(true);
    });
  });

  it('in a link wins over what was chosen before, and stays', async () => {
    await visit(exercise, {}, async ({ page }) => {
      await choose(page, 'inch');
      await page.goto(`${exercise}?units=metric`);
      expect(await units(page)).toBe('metric');
      await page.goto(exercise);
      expect(await units(page)).toBe('metric');
    });
  });

  it('in a link gives way when the reader chooses again, and the address follows', async () => {
    await visit(exercise, { units: 'metric' }, async ({ page }) => {
      await choose(page, 'inch');
      expect(new URL(page.url()).searchParams.get('units')).toBe('us');
      await page.reload();
      expect(await units(page)).toBe('us');
    });
  });

  it.each(['furlongs', '<script>', ''])('ignores %j in a link', async (word) => {
    await visit(exercise, {}, async ({ page }) => {
      await page.goto(`${exercise}?units=${encodeURIComponent(word)}`);
      expect(await units(page)).toBe('us');
    });
  });

  it('shows one of the two systems, never both', async () => {
    await visit(exercise, {}, async ({ page }) => {
      const shown = (system: string) => page.locator(`main .${system}:visible`).count();
      expect(await shown('us')).toBeGreaterThan(0);
      expect(await shown('metric')).toBe(0);
      await choose(page, 'metric');
      expect(await shown('us')).toBe(0);
      expect(await shown('metric')).toBeGreaterThan(0);
    });
  });

  it('works where the browser keeps nothing', async () => {
    await visit(exercise, {}, async ({ page, trouble }) => {
      await page.addInitScript(() => {
        Object.defineProperty(window, 'localStorage', {
          get: () => {
            throw new DOMException('closed', 'SecurityError');
          },
        });
      });
      await page.goto(`${exercise}?units=metric`);
      expect(await units(page)).toBe('metric');
      await choose(page, 'inch');
      expect(await units(page)).toBe('us');
      expect(trouble).toEqual([]);
    });
  });
});
