import { HtmlValidate, Parser } from 'html-validate';
import { expect, it } from 'vitest';
import { eachPage, site } from './built-site.ts';
import { addressesOn, linkProblems } from './link-problems.ts';

const parserSettings = new HtmlValidate().getConfigForSync('page.html');

it.each(eachPage)('%s', (_path, page) => {
  expect(linkProblems(page, site)).toEqual([]);
});

it('notices a link to a sentence that the page does not hold', () => {
  const linked = site.pages.find((page) => page.html.includes(':~:text='));
  expect(linked).toBeDefined();
  if (!linked) return;
  const html = linked.html.replaceAll(':~:text=', ':~:text=Never%20said%20here%20');
  const document = new Parser(parserSettings).parseHtml(html);
  const problems = linkProblems({ ...linked, html, document }, site);
  expect(problems.filter((one) => one.endsWith('these words are not there'))).not.toEqual([]);
});

it('finds links at all', () => {
  const links = site.pages.flatMap(addressesOn);
  expect(links.length).toBeGreaterThan(site.pages.length);
});
