/** The learner's way: an example with steps left open, slips named, hints one by one. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { site } from '../site/built-site.ts';
import { visit } from './reader.ts';

const lesson = `${site.base}lessons/flat-bead/`;

/** The example of heat: 22 V, 125 A, 6 in/min, so 27.5 kJ/in and 22 kJ/in. */
async function heatExample(page: Page) {
  const example = page
    .locator('.worked-example')
    .filter({ hasText: 'How much heat that bead got' });
  await example.scrollIntoViewIfNeeded();
  await example.getByRole('button', { name: 'Last step' }).waitFor();
  return example;
}

describe('a worked example', () => {
  it('leaves its last step open, names the slip, gives way hint by hint, and comes back whole', async () => {
    await visit(lesson, {}, async ({ page, trouble }) => {
      const example = await heatExample(page);
      const whole = await example.locator('.answers').textContent();
      await example.getByRole('button', { name: 'Last step' }).click();
      const field = example.getByRole('textbox');
      await expect.poll(() => field.count()).toBe(1);
      await expect.poll(() => field.evaluate((box) => box === document.activeElement)).toBe(true);
      expect(await example.locator('.answers').isVisible()).toBe(false);
      await field.fill('27.5');
      await field.press('Enter');
      const said = example.getByRole('status');
      await expect.poll(() => said.textContent()).toMatch(/arc energy/);
      expect(await field.getAttribute('aria-describedby')).toBe(await said.getAttribute('id'));
      await field.fill('22 kJ/in');
      await field.press('Enter');
      await expect.poll(() => said.textContent()).toMatch(/^Right/);
      await example.getByRole('button', { name: 'Show it whole' }).click();
      await example.locator('.answers').waitFor();
      expect(await example.locator('.answers').textContent()).toBe(whole);
      expect(await example.getByRole('textbox').count()).toBe(0);
      expect(trouble).toEqual([]);
    });
  });

  it('leaves two steps open and shows one when asked for it', async () => {
    await visit(lesson, { width: 360 }, async ({ page, trouble }) => {
      const example = await heatExample(page);
      await example.getByRole('button', { name: 'Two steps' }).click();
      await expect.poll(() => example.getByRole('textbox').count()).toBe(2);
      await example.getByRole('button', { name: 'Hint: the numbers put in' }).first().click();
      await example.getByRole('button', { name: 'Show this step' }).first().click();
      await expect
        .poll(() => example.getByRole('status').first().textContent())
        .toBe('It is 28\u00a0kJ/in.');
      expect(trouble).toEqual([]);
    });
  });

  it('comes with fresh numbers, again and again, in the reader’s units', async () => {
    await visit(lesson, { units: 'metric' }, async ({ page, trouble }) => {
      const example = await heatExample(page);
      const seen = new Set<string>();
      for (let round = 0; round < 4; round++) {
        await example.getByRole('button', { name: 'Fresh numbers' }).click();
        await example.getByRole('textbox').first().waitFor();
        const given = await example.locator('.givens:visible').textContent();
        expect(given).toMatch(/mm\/min/);
        seen.add(given ?? '');
      }
      expect(seen.size).toBeGreaterThan(1);
      expect(trouble).toEqual([]);
    });
  });
});

describe('a problem set', () => {
  it('comes from its address, the same for everybody, with its key', async () => {
    const address = `${site.base}practice/?lesson=flat-bead&set=77&count=4&units=us`;
    const open = () =>
      visit(address.split('?')[0] as string, {}, async ({ page, trouble }) => {
        await page.goto(address);
        await page.getByRole('heading', { name: 'Answer key, set 77' }).waitFor();
        expect(trouble).toEqual([]);
        return page.locator('#practice-desk ol').allTextContents();
      });
    const [sheet, key] = await open();
    expect(sheet).toBeTruthy();
    expect(key).toBeTruthy();
    expect(await open()).toEqual([sheet, key]);
  });

  it('keeps what was typed and says by the field what does not fit', async () => {
    await visit(`${site.base}practice/`, { width: 360 }, async ({ page }) => {
      const box = page.getByRole('textbox', { name: 'Problems' });
      await box.fill('99');
      await expect
        .poll(() => page.locator('#practice-count-said').textContent())
        .toBe('Problems is a whole number from 1 to 30.');
      expect(await box.inputValue()).toBe('99');
      await box.fill('5');
      await expect.poll(() => page.url()).toMatch(/count=5/);
    });
  });
});

describe('a learner’s record', () => {
  it('holds what a lesson’s end button put there', async () => {
    await visit(lesson, {}, async ({ page, trouble }) => {
      await heatExample(page);
      await page.locator('.onward').scrollIntoViewIfNeeded();
      await page.getByRole('button', { name: 'I have read this lesson' }).click();
      await page.getByRole('link', { name: 'Your record' }).first().click();
      await page.getByText('The first straight bead', { exact: true }).waitFor();
      expect(trouble).toEqual([]);
    });
  });

  it('takes a graded coupon only with initials, and counts it', async () => {
    await visit(`${site.base}record/`, { width: 360 }, async ({ page, trouble }) => {
      await page.getByLabel('Result').selectOption('passed');
      await page.getByRole('button', { name: 'Put it in' }).click();
      await page.getByText('Graded by needs initials').waitFor();
      await page.getByLabel('Graded by').fill('TL');
      await page.getByRole('button', { name: 'Put it in' }).click();
      await page.getByText('1 of 1 graded coupons passed').waitFor();
      await page.reload();
      await page.getByText('1 of 1 graded coupons passed').waitFor();
      expect(trouble).toEqual([]);
    });
  });
});

describe('practice in a lesson', () => {
  it('goes into the record, with the day and what was not solved alone', async () => {
    await visit(lesson, {}, async ({ page, trouble }) => {
      await page.locator('[data-practice]').scrollIntoViewIfNeeded();
      await page.getByRole('button', { name: 'Practice with fresh numbers' }).click();
      const hint = page.locator('.practice form button[type=button]').first();
      for (let told = 0; told < 3; told++) await hint.click();
      const kept = () =>
        page.evaluate(() => {
          const text = localStorage.getItem('sixteenths.learner-record');
          return text === null ? [] : JSON.parse(text).data.problems;
        });
      await expect.poll(kept).toMatchObject([
        {
          calculation: 'travel-speed',
          place: 0,
          solved: false,
          on: expect.stringMatching(/^\d{4}-/),
        },
      ]);
      expect(trouble).toEqual([]);
    });
  });
});
