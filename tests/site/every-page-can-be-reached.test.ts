import { expect, it } from 'vitest';
import { site } from './built-site.ts';
import { addressesOn } from './link-problems.ts';

it('every page can be reached from the front page by following links', () => {
  const pageAt = new Map(site.pages.map((page) => [page.path, page]));
  const reached = new Set([site.base]);
  for (const path of reached) {
    const page = pageAt.get(path);
    for (const address of page ? addressesOn(page) : []) {
      reached.add(new URL(address, `http://this-site.invalid${path}`).pathname);
    }
  }
  const lost = [...pageAt.keys()].filter((path) => !reached.has(path));
  // Hosts show this one for addresses that lead nowhere.
  expect(lost).toEqual([`${site.base}404.html`]);
});
