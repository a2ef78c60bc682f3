import { PDFDocument } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { sampledPages } from './page-paths.ts';
import { visit } from './reader.ts';

const lesson = sampledPages.find((path) => /\/lessons\/./.test(path)) as string;

/** In points. */
const papers = { A4: [595, 842], Letter: [612, 792] } as const;

describe('on paper', () => {
  it.each(Object.entries(papers))(
    'the longest lesson fits a few sheets of %s',
    async (format, size) => {
      const pdf = await visit(lesson, {}, ({ page }) =>
        page.pdf({ format, printBackground: true }),
      );
      const sheets = (await PDFDocument.load(pdf)).getPages();
      expect(sheets.length).toBeGreaterThanOrEqual(1);
      expect(sheets.length).toBeLessThanOrEqual(7);
      for (const sheet of sheets) {
        // Chromium rounds a sheet up to whole pixels.
        expect(Math.abs(sheet.getWidth() - size[0])).toBeLessThan(2);
        expect(Math.abs(sheet.getHeight() - size[1])).toBeLessThan(2);
      }
    },
  );

  it.each(sampledPages)(
    '%s prints black on white, without what only serves a screen',
    async (path) => {
      const printed = await visit(path, { theme: 'dark' }, async ({ page }) => {
        await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
        return page.evaluate(() => {
          const shown = (selector: string) =>
            [...document.querySelectorAll(selector)].filter((one) => one.checkVisibility()).length;
          const { backgroundColor, color } = getComputedStyle(document.body);
          const ground = getComputedStyle(document.documentElement).backgroundColor;
          return {
            ground: [ground, backgroundColor],
            color,
            menus: shown('nav'),
            buttons: shown('button'),
          };
        });
      });
      const white = /^(rgb\(255, 255, 255\)|rgba\(0, 0, 0, 0\))$/;
      for (const color of printed.ground) expect(color).toMatch(white);
      expect(printed.color).toBe('rgb(0, 0, 0)');
      expect(printed.menus, 'menus').toBe(0);
      expect(printed.buttons, 'buttons').toBe(0);
    },
  );
});
