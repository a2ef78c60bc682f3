/** The numbers of a booth reach the lesson through its link alone. */
import { describe, expect, it } from 'vitest';
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

  it('changes nothing where there is no link', () =>
    visit(`${site.base}lessons/fillet-2f/`, {}, async ({ page, quiet }) => {
      await quiet();
      expect(await page.locator('main > div > aside').count()).toBe(0);
    }));
});
