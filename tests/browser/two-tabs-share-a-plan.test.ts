/** Two tabs on one plan: what one writes reaches the other, and neither runs over the other's work. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { site } from '../site/built-site.ts';
import { visit } from './reader.ts';

const plan = `${site.base}class/`;
const evenings = (page: Page) => page.getByLabel('Evenings in the term');
const opened = (page: Page) => page.getByRole('heading', { name: 'Your plan' }).waitFor();
const kept = (page: Page) =>
  page.evaluate(() => JSON.parse(localStorage.getItem('sixteenths.class-plan') ?? '{}'));

/** Opens the plan in two tabs of one browser; the second is closed again. */
const inTwoTabs = (look: (one: Page, other: Page) => Promise<void>, deaf = false) =>
  visit(plan, {}, async ({ page: one, trouble }) => {
    const other = await one.context().newPage();
    try {
      // A tab that slept, or came back from the back-forward cache, has heard nothing.
      if (deaf)
        await other.addInitScript(() =>
          addEventListener('storage', (event) => event.stopImmediatePropagation(), true),
        );
      await other.goto(plan);
      await Promise.all([opened(one), opened(other)]);
      await look(one, other);
      expect(trouble).toEqual([]);
    } finally {
      await other.close();
    }
  });

it('shows in one tab what was typed in the other, says so, and can go back', () =>
  inTwoTabs(async (one, other) => {
    await evenings(one).fill('20');
    await other.getByText('Another tab has changed this plan; here it is.').waitFor();
    expect(await evenings(other).inputValue()).toBe('20');
    await other.getByLabel('Name of the plan').fill('Autumn');
    await expect.poll(() => one.getByLabel('Name of the plan').inputValue()).toBe('Autumn');
    expect(await evenings(one).inputValue()).toBe('20');
    await other.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => one.getByLabel('Name of the plan').inputValue()).not.toBe('Autumn');
    expect((await kept(one)).data.settings.evenings).toBe('20');
  }));

it('does not write over what another tab put there unheard, and keeps what was typed', () =>
  inTwoTabs(async (one, other) => {
    await evenings(one).fill('20');
    await evenings(other).fill('30');
    await other.getByText('Another tab has changed this meanwhile.').waitFor();
    expect(await evenings(other).inputValue()).toBe('30');
    expect((await kept(one)).data.settings.evenings).toBe('20');
    await other.reload();
    await opened(other);
    expect(await evenings(other).inputValue()).toBe('20');
  }, true));
