import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { site } from '../site/built-site.ts';
import { readToTheEnd } from './read-to-the-end.ts';
import { visit } from './reader.ts';

/** What would run, show up as an element, or throw, wherever text is taken for more than text. */
const hostile = [
  '<img src=x onerror="window.hacked=1">',
  '"><script>window.hacked=1</script>',
  "';window.hacked=1;//",
  'javascript:window.hacked=1',
  '__proto__',
  '{"__proto__":{"hacked":1}}',
  '%',
  '\u0000\uFFFF\u202E',
  '1e999',
  'a'.repeat(5000),
];

/** Pages that read their address, keep something, or open a file. */
const pages = [
  'calculators/heat-input/',
  'calculators/electrode-exposure/',
  'lessons/flat-bead/',
  'exercises/flat-bead/',
  'search/',
  'section/',
  'booth/',
  'class/',
  'grading/',
  'electrodes/',
  'audit/your-outline/',
]
  .map((path) => site.base + path)
  .filter((path) => site.files.has(`${path}index.html`));

const shelves = ['units', 'offline', 'own-outline', 'learner', 'class', 'booth', 'section'].map(
  (kind) => `sixteenths.${kind}`,
);

const isHacked = (page: Page) =>
  page.evaluate(
    () =>
      'hacked' in window ||
      'hacked' in {} ||
      document.querySelector('img[src="x"], [onerror]') !== null ||
      [...document.links].some(({ protocol }) => protocol === 'javascript:'),
  );

/** Names that the page itself reads from its address, from the ids of its fields. */
const parameters = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const calculators = [...document.querySelectorAll<HTMLElement>('[data-calculator]')];
    const own = calculators.flatMap((box) =>
      [...box.querySelectorAll('input[id], select[id]')]
        .map(({ id }) => id.slice(`${box.dataset.name}-`.length))
        .map((field) => `${box.dataset.name}.${field}`),
    );
    return [
      ...own.slice(0, 12),
      'q',
      'units',
      'booth.current',
      'booth.exercise',
      'nothing.like.it',
    ];
  });

/** Every text in some name, and in other names in the next round; a load for each would take minutes. */
const rounds = [0, 3, 7];
const spread = (names: readonly string[], round: number): [string, string][] =>
  names.map((name, at) => [name, hostile[(at + round) % hostile.length] as string]);

describe('a hostile link and hostile text in the storage do no harm', () => {
  it.each(pages)('%s', async (path) => {
    await visit(path, {}, async ({ page, trouble, quiet }) => {
      const names = await parameters(page);
      for (const round of rounds) {
        await page.evaluate(
          (kept) => {
            for (const [key, text] of kept) localStorage.setItem(key, text);
          },
          spread(shelves, round),
        );
        // Short, so that the address stays one that servers take.
        const link = spread(names, round).map(([name, text]) => [name, text.slice(0, 300)]);
        const end = encodeURIComponent(hostile[round] as string);
        await page.goto(`${path}?${new URLSearchParams(link)}#${end}`);
        await readToTheEnd(page);
        await quiet();
        expect(await isHacked(page), `round ${round}`).toBe(false);
        expect(await page.locator('h1').count()).toBe(1);
      }
      expect(trouble).toEqual([]);
    });
  });
});

describe('a hostile file does no harm', () => {
  it.each(pages)('%s', async (path) => {
    await visit(path, {}, async ({ page, trouble, quiet }) => {
      await readToTheEnd(page);
      await quiet();
      const choosers = await page.locator('input[type="file"]').all();
      for (const chooser of choosers) {
        for (const text of hostile.slice(0, 6)) {
          const buffer = Buffer.from(text);
          await chooser.setInputFiles({ name: '<b>.json', mimeType: 'application/json', buffer });
        }
        await quiet();
        expect(await isHacked(page)).toBe(false);
      }
      // A picture that is none is refused by the browser, not by the policy.
      expect(trouble.filter((one) => !one.includes('blob:'))).toEqual([]);
    });
  });
});

describe('the browser itself takes no text for markup', () => {
  it('where it knows trusted types', async () => {
    await visit(`${site.base}lessons/flat-bead/`, {}, async ({ page }) => {
      const refused = await page.evaluate(() => {
        try {
          document.body.innerHTML = '<b>text</b>';
          return 'taken';
        } catch (thrown) {
          return (thrown as Error).name;
        }
      });
      expect(refused).toBe('TypeError');
    });
  });
});
