import { expect, it } from 'vitest';
import { eachPage } from './built-site.ts';

/** Words that stand on a page only when a value was missing or a thing was printed as text. */
const slips = /\b(undefined|NaN|Infinity|null)\b|\[object |=>|\$\{|\{\{/g;

it.each(eachPage)('%s', (_path, page) => {
  const main = page.document.querySelector('main');
  const text = main?.textContent.replace(/\s+/g, ' ') ?? '';
  expect(text, 'text of <main>').toMatch(/\w/);
  const found = [...text.matchAll(slips)].map(({ index }) =>
    text.slice(Math.max(0, index - 40), index + 40),
  );
  expect(found).toEqual([]);
});
