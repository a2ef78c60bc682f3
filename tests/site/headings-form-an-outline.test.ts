import { expect, it } from 'vitest';
import { eachPage } from './built-site.ts';

it.each(eachPage)('%s', (_path, page) => {
  const headings = page.document
    .querySelectorAll('h1, h2, h3, h4, h5, h6')
    // Found level by level: back to the order of the page.
    .toSorted((a, b) => a.location.offset - b.location.offset);
  const levels = headings.map((heading) => Number(heading.tagName.slice(1)));
  expect(
    levels.filter((level) => level === 1),
    'number of first-level headings',
  ).toHaveLength(1);
  expect(levels[0], 'level of the first heading').toBe(1);
  const leaps = headings.filter((_, i) => i > 0 && (levels[i] ?? 0) > (levels[i - 1] ?? 0) + 1);
  expect(
    leaps.map((heading) => heading.textContent.trim()),
    'skips a level',
  ).toEqual([]);
  const empty = headings.filter((heading) => heading.textContent.trim() === '');
  expect(empty, 'headings without text').toHaveLength(0);
});
