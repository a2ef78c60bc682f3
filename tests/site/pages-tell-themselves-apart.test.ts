import { expect, it } from 'vitest';
import { attribute, type BuiltPage, eachPage, site } from './built-site.ts';

const titleOf = (page: BuiltPage) =>
  page.document.querySelector('head > title')?.textContent.trim();
const descriptionOf = (page: BuiltPage) => {
  const meta = page.document.querySelector('head > meta[name="description"]');
  return meta ? attribute(meta, 'content')?.trim() : undefined;
};

it.each(eachPage)('%s has a title, a description and a language', (_path, page) => {
  expect(titleOf(page)).toMatch(/\w/);
  expect(descriptionOf(page)).toMatch(/\w/);
  expect(page.document.querySelector('html')?.getAttributeValue('lang')).toMatch(/^en\b/);
});

it.each([
  ['title', titleOf],
  ['description', descriptionOf],
])('no two pages share a %s', (_name, read) => {
  const byText = Map.groupBy(site.pages, read);
  const shared = [...byText].filter(([, pages]) => pages.length > 1);
  expect(shared.map(([text, pages]) => `${text}: ${pages.map((page) => page.path)}`)).toEqual([]);
});
