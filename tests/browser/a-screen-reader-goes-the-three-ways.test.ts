/**
 * The three journeys by ear: what the browser hands a screen reader, in the order in which it comes,
 * and what is spoken without being asked for.
 */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { site } from '../site/built-site.ts';
import { type Heard, heard, listen, spoken } from './heard.ts';
import { visit } from './reader.ts';

const phone = { width: 360, height: 740 };

const at = (stops: readonly Heard[], role: string, name: RegExp): number =>
  stops.findIndex((stop) => stop.role === role && name.test(stop.name));

/** That these come, and in this order. */
function inOrder(stops: readonly Heard[], ...wanted: [role: string, name: RegExp][]): void {
  const places = wanted.map(([role, name]) => at(stops, role, name));
  expect(places, JSON.stringify(wanted.map(String))).not.toContain(-1);
  expect(places).toEqual(places.toSorted((a, b) => a - b));
}

const fields = (stops: readonly Heard[]) =>
  stops.filter(({ role }) => /^(textbox|combobox|spinbutton|checkbox|slider)$/.test(role));

/** What holds for every page of a journey. */
function soundPage(stops: readonly Heard[]): void {
  inOrder(stops, ['link', /^Skip to the text$/], ['navigation', /^Main$/], ['heading', /./]);
  const [first, ...others] = stops.filter(({ role }) => role === 'heading');
  expect(first?.level, 'the first heading').toBe(1);
  expect(
    others.every(({ level }) => level !== 1),
    'one heading of the first level',
  ).toBe(true);
  for (const stop of stops)
    if (/^(link|button|textbox|combobox|checkbox|radio|img|image|heading)$/.test(stop.role))
      expect(stop.name, `the name of a ${stop.role}`).not.toBe('');
  const names = fields(stops).map(({ name }) => name);
  expect(names, 'fields told apart by their names').toEqual([...new Set(names)]);
}

/** Whether a reader who followed a link landed on what it promised. */
const targetIsInSight = (page: Page) =>
  page.evaluate(() => {
    const { top = -1 } = document.querySelector(':target')?.getBoundingClientRect() ?? {};
    return top >= 0 && top < innerHeight;
  });

const focused = (page: Page) =>
  page.evaluate(() => {
    const { id } = document.activeElement ?? {};
    return document.querySelector(`label[for="${id}"]`)?.textContent?.trim() ?? '';
  });

describe('a student: lesson, calculator, practice', () => {
  it('hears the caution and the hazards before anything to do, each drawing and formula by name', () =>
    visit(`${site.base}lessons/flat-bead/`, phone, async ({ page }) => {
      const stops = await heard(page);
      inOrder(
        stops,
        ['heading', /^The first straight bead$/],
        ['complementary', /^Caution$/],
        ['heading', /^What you need first$/],
        ['heading', /^Hazards first$/],
        ['heading', /^Set up$/],
        ['heading', /^Do it$/],
        ['heading', /^The numbers$/],
        ['heading', /^Practice$/],
        ['navigation', /^Lessons before and after$/],
      );
      const levels = stops.flatMap(({ level, role }) =>
        role === 'heading' && level ? [level] : [],
      );
      for (const [place, level] of levels.entries())
        expect(level - (levels[place - 1] ?? 0), `heading ${place}`).toBeLessThanOrEqual(1);
      expect(stops.filter(({ role }) => /^(img|image)$/.test(role)).length).toBeGreaterThan(0);
      expect(stops.filter(({ role }) => role.startsWith('MathML')).length).toBeGreaterThan(0);
    }));

  it('hears each field with its unit in words, the answer after the fields, and each new answer once', () =>
    visit(`${site.base}calculators/travel-speed/`, phone, async ({ page }) => {
      await page.locator('[data-alive]').waitFor();
      const stops = await heard(page);
      soundPage(stops);
      inOrder(
        stops,
        ['heading', /^Travel speed$/],
        ['region', /^Your numbers$/],
        ['textbox', /^Bead length, in inches$/],
        ['textbox', /^Arc time, in seconds$/],
        ['status', /^/],
      );
      await listen(page);
      await page.getByLabel('Bead length').fill('8');
      // 60 × 8 in / 70 s = 6.857 in/min.
      await expect.poll(() => spoken(page)).toEqual(['Travel speed 6.9 in/min']);

      await page.getByLabel('Bead length').fill('long');
      await expect
        .poll(() => spoken(page))
        .toEqual(expect.arrayContaining(['Bead length needs a number, not “long”.']));
      const [field] = fields(await heard(page));
      expect(field).toMatchObject({ value: 'long', invalid: true });
      expect(field?.description).toContain('Bead length needs a number, not “long”.');

      await page.getByLabel('Bead length').fill('8');
      await expect.poll(() => spoken(page)).toEqual(['Travel speed 6.9 in/min']);
      expect(fields(await heard(page))[0]).toMatchObject({ invalid: false });
    }));

  it('is put into the box of a problem, hears whether it is right, and hears nothing by itself', () =>
    visit(`${site.base}lessons/flat-bead/`, phone, async ({ page, quiet }) => {
      // The foot has told first whether this browser keeps a copy.
      await page.locator('[data-offline] [role=status]', { hasText: /./ }).waitFor();
      await listen(page);
      await page.locator('[data-practice]').scrollIntoViewIfNeeded();
      await quiet();
      expect(await spoken(page), 'while it only comes into view').toEqual([]);
      await page.getByRole('button', { name: 'Practice with fresh numbers' }).click();
      await expect.poll(() => focused(page)).toMatch(/^Travel speed/);
      const stops = await heard(page);
      const heading = at(stops, 'heading', /^Practice$/);
      const box = stops.findIndex(
        ({ role, name }, place) => place > heading && role === 'textbox' && /speed/.test(name),
      );
      const before = stops.slice(heading, box).map(({ name }) => name);
      expect(
        before.some((text) => text.length > 40),
        'the question, before its box',
      ).toBe(true);
      // Numbers come by chance, and so small an answer fits no slip.
      await page.keyboard.type('0.000123');
      await page.keyboard.press('Enter');
      await expect.poll(() => spoken(page)).toEqual([expect.stringMatching(/^Too little/)]);
      expect(fields(await heard(page)).at(-1)?.description).toMatch(/^Too little/);
    }));
});

describe('an instructor: link, sheet, grading', () => {
  it('hears that link and sheet are there, and finds them by heading, link and code', () =>
    visit(`${site.base}booth/`, phone, async ({ page }) => {
      await page.getByLabel('Exercise, or lesson alone').waitFor();
      soundPage(await heard(page));
      await listen(page);
      await page.getByLabel('Exercise, or lesson alone').selectOption('exercise/fillet-2f');
      await expect.poll(() => spoken(page)).toContain('Link and sheet are ready below.');
      await page.getByLabel('Current (A)').fill('many');
      await expect
        .poll(async () => fields(await heard(page)).find(({ name }) => /^Current/.test(name)))
        .toMatchObject({
          invalid: true,
          description: expect.stringContaining('Current needs a number, not “many”'),
        });
      await page.getByLabel('Current (A)').fill('128');
      await expect
        .poll(async () =>
          (await heard(page)).some(
            ({ role, name }) =>
              role === 'link' && /fillet-2f\/\?.*128/.test(decodeURIComponent(name)),
          ),
        )
        .toBe(true);
      const stops = await heard(page);
      inOrder(
        stops,
        ['combobox', /^Exercise/],
        ['textbox', /^Current/],
        ['heading', /^The link$/],
        ['button', /^Copy the link/],
        ['button', /^Print the sheet$/],
      );
      expect(stops.filter(({ role }) => /^(img|image)$/.test(role)).length, 'codes').toBe(
        stops.filter(({ role, name }) => /^(img|image)$/.test(role) && name !== '').length,
      );
    }));

  it('is put into a new coupon, and hears the verdict with what was missed', () =>
    visit(`${site.base}grading/?exercise=fillet-2f`, phone, async ({ page }) => {
      await page.getByRole('button', { name: 'Add a coupon' }).click();
      await expect.poll(() => focused(page)).toMatch(/^Learner, by number/);
      const stops = await heard(page);
      soundPage(stops);
      inOrder(
        stops,
        ['heading', /^Grading sheet$/],
        ['columnheader', /^Result$/],
        ['heading', /^Coupon$/],
        ['textbox', /^Learner, by number/],
        ['textbox', /^size/i],
      );
      await listen(page);
      await page.getByLabel(/^size/i).fill('1/4');
      await expect.poll(() => spoken(page)).toEqual(['Repeat, 0 %. Missed: size.']);
    }));
});

describe('a reviewer: audit, rule, source', () => {
  const audit = `${site.base}audit/`;

  it('hears the verdict first, and each rule’s link apart from its neighbors', () =>
    visit(audit, phone, async ({ page }) => {
      const stops = await heard(page);
      soundPage(stops);
      const heading = at(stops, 'heading', /^Does the sequence hold\?$/);
      const verdict = stops.findIndex(({ name }) => /^Yes: all \d+ rules are met\.$/.test(name));
      const rules = stops.filter(({ role, name }) => role === 'link' && /looked at for/.test(name));
      expect(verdict).toBeGreaterThan(heading);
      expect(verdict).toBeLessThan(stops.indexOf(rules[0] as Heard));
      expect(rules.length).toBeGreaterThan(10);
      expect(new Set(rules.map(({ name }) => name)).size).toBe(rules.length);
    }));

  it('follows a rule to a place where it is met, and from there to the publication', () =>
    visit(audit, phone, async ({ page }) => {
      await page.getByRole('link', { name: /acceptance points/ }).click();
      await page.waitForURL(/audit\/rules\//);
      const rule = await heard(page);
      soundPage(rule);
      await page
        .getByRole('link', { name: /^“The horizontal fillet” has \d+ acceptance points/ })
        .click();
      await page.waitForURL(/lessons\/fillet-2f\/#/);
      expect(await targetIsInSight(page)).toBe(true);
      await page.locator('main').getByRole('link', { name: 'AWS D1.1' }).last().click();
      await page.waitForURL(/sources\/#source-aws-d1-1$/);
      const stops = await heard(page);
      soundPage(stops);
      expect(at(stops, 'heading', /AWS D1\.1/)).toBeGreaterThan(0);
      expect(await targetIsInSight(page)).toBe(true);
    }));

  it('hears every table with the heads of its columns', () =>
    visit(`${audit}report/`, phone, async ({ page }) => {
      const stops = await heard(page);
      soundPage(stops);
      const tables = stops.filter(({ role }) => role === 'table').length;
      expect(tables).toBeGreaterThan(3);
      expect(stops.filter(({ role }) => role === 'columnheader').length).toBeGreaterThan(tables);
      expect(stops.filter(({ role }) => role === 'rowheader').length).toBeGreaterThan(tables);
    }));
});
