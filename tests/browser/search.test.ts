import { expect, it } from 'vitest';
import { site } from '../site/built-site.ts';
import { visit } from './reader.ts';

const search = `${site.base}search/`;

it('leads from the top of a page to the heading, by keys alone', async () => {
  await visit(`${site.base}lessons/flat-bead/`, { width: 360 }, async ({ page, trouble }) => {
    await page.getByRole('link', { name: 'Search' }).first().focus();
    await page.keyboard.press('Enter');
    await page.waitForURL(`**${search}`);
    // The box has the focus, and what is typed before the list has come is not lost.
    await page.locator('#sought:focus').waitFor();
    await page.keyboard.type('undercutt');
    await page
      .getByRole('status')
      .first()
      .getByText(/\d+ places/)
      .waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Escape');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('sought');
    await page.keyboard.press('Enter');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toMatch(/undercut/i);
    await page.keyboard.press('Enter');
    await page.waitForURL(/glossary\/#undercut$|faults\/#undercut$/);
    await page.goBack();
    await expect.poll(() => page.locator('#sought').inputValue()).toBe('undercutt');
    // The index comes again after the box has its text back.
    await page.locator('.found li').first().waitFor();
    expect(trouble).toEqual([]);
  });
});

it('takes what stands in the address for text', async () => {
  const hostile = '<img src=x onerror=alert(1)>';
  const path = `${search}?q=${encodeURIComponent(hostile)}`;
  await visit(path, {}, async ({ page, trouble, quiet }) => {
    await quiet();
    expect(await page.locator('#sought').inputValue()).toBe(hostile);
    expect(await page.locator('main img').count()).toBe(0);
    expect(trouble.join('\n')).toBe('');
  });
});

it('without scripts says so and points to the lists', async () => {
  await visit(search, { scripts: false }, async ({ page }) => {
    expect(await page.getByText('Searching needs scripts').isVisible()).toBe(true);
    expect(await page.locator('#sought').isVisible()).toBe(false);
    expect(await page.getByRole('link', { name: 'Words of the trade' }).first().isVisible()).toBe(
      true,
    );
  });
});

it('says so when the list of places does not come', async () => {
  await visit(`${site.base}about/`, {}, async ({ page }) => {
    await page.route('**/search.json', (route) => route.abort());
    await page.goto(`${search}?q=slag`);
    await page.getByText('The list of places did not come').waitFor();
    await page.unroute('**/search.json');
  });
});
