/** A joint with one electrode for its root and another to fill it: each is set, and each goes where it belongs. */
import { expect, it } from 'vitest';
import { site } from '../site/built-site.ts';
import { visit } from './reader.ts';

const numbers =
  'booth.v=1&booth.rootclass=E6011&booth.rootelectrode=3/32in&booth.electrode=5/32in&booth.place=7';

it('the booth page asks for both where the exercise has both, and for one where it has one', () =>
  visit(`${site.base}booth/`, { width: 360 }, async ({ page, trouble }) => {
    await page.getByRole('heading', { name: 'Whose booth' }).waitFor();
    const pick = page.getByLabel('Exercise, or lesson alone');
    await pick.selectOption('exercise/pipe-6g-nps-6');
    const current = page.getByLabel('Current, root pass (A)');
    await current.fill('120');
    await expect
      .poll(() => page.locator('#booth-rootcurrent-problem').textContent())
      .toMatch(/65 A to 90 A/);
    await page.getByLabel('Current, fill and cover (A)').fill('115');
    await expect.poll(() => page.locator('#booth-current-problem').textContent()).toBe('');
    await current.fill('80');
    await expect
      .poll(() => page.locator('.booth-links a').getAttribute('href'))
      .toMatch(/booth\.rootcurrent=80A.*booth\.current=115A/);
    await current.fill('');
    await pick.selectOption('exercise/fillet-2f');
    await expect.poll(() => current.count()).toBe(0);
    expect(trouble).toEqual([]);
  }));

it('the lesson gives the root its electrode, and says which example stays as it was', () =>
  visit(`${site.base}lessons/open-root/`, { width: 360 }, async ({ page, trouble }) => {
    await page.goto(`${site.base}lessons/open-root/?${numbers}`);
    const banner = page.getByRole('complementary', { name: 'Numbers of a booth' });
    await expect
      .poll(() => banner.textContent())
      .toMatch(/Used in .*Gap, edge and keyhole.*Standard as before: .*Preheat/);
    const fact = page.locator('.head .plate > div', { hasText: 'Electrode' }).locator('dd');
    expect(await fact.textContent()).toMatch(/^\s*E6011,.*E7018,/);
    const sizes = (await fact.locator('.us').allTextContents()).map((it) =>
      it.replace('\u00a0', ' '),
    );
    expect(sizes).toEqual(['3/32 in', '5/32 in']);
    const example = page.locator('.worked-example', { hasText: 'Gap, edge and keyhole' });
    expect(await example.locator('.givens .us').allTextContents()).toContain('3/32\u00a0in');
    expect(trouble).toEqual([]);
  }));
