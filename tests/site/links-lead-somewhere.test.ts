import { expect, it } from 'vitest';
import { eachPage, site } from './built-site.ts';
import { addressesOn, linkProblems } from './link-problems.ts';

it.each(eachPage)('%s', (_path, page) => {
  expect(linkProblems(page, site)).toEqual([]);
});

it('finds links at all', () => {
  const links = site.pages.flatMap(addressesOn);
  expect(links.length).toBeGreaterThan(site.pages.length);
});
