import { expect, it } from 'vitest';
import { site } from './built-site.ts';

/** A page's words that a reader meets before any script has run. */
const words = (path: string) =>
  site.pages
    .find((page) => page.path === site.base + path)
    ?.html.replace(/<(script|style)[\s\S]*?<\/\1>/g, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ') ?? '';

it('the start page and the page on networks say how much the course is, before it is loaded', () => {
  expect(words('')).toMatch(/the whole course opens without a network: \d+(\.\d)? MB, loaded once/);
  expect(words('offline/')).toMatch(/\d+(\.\d)? MB/);
});

it('every page says it at its foot, the same figure', () => {
  const figures = site.pages.map(({ path, html }) => [
    path,
    /data-offline="([\d.]+)"/.exec(html)?.[1],
  ]);
  const [[, figure = ''] = []] = figures;
  expect(Number(figure)).toBeGreaterThan(0.5);
  expect(figures.filter(([, other]) => other !== figure)).toEqual([]);
});
