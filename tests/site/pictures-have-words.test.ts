import type { HtmlElement } from 'html-validate';
import { expect, it } from 'vitest';
import { attribute, type BuiltPage, eachPage } from './built-site.ts';

it.each(eachPage)('%s', (_path, page) => {
  const pictures = page.document.querySelectorAll('img, svg, canvas, object, input[type="image"]');
  const silent = pictures.filter((picture) => !hasWords(picture, page));
  expect(silent.map((picture) => `<${picture.tagName}> in line ${picture.location.line}`)).toEqual(
    [],
  );
});

/** Words, or said outright to be decoration: hidden, or an empty `alt`. */
function hasWords(picture: HtmlElement, page: BuiltPage): boolean {
  for (let element: HtmlElement | null = picture; element; element = element.parent) {
    if (element.getAttributeValue('aria-hidden') === 'true') return true;
  }
  if (picture.tagName === 'img' && picture.hasAttribute('alt')) return true;
  if (attribute(picture, 'aria-label')?.trim()) return true;
  const labels = attribute(picture, 'aria-labelledby')?.split(/\s+/) ?? [];
  if (labels.some((id) => page.document.querySelector(`#${id}`)?.textContent.trim())) return true;
  return picture.tagName === 'svg' && Boolean(picture.querySelector('title')?.textContent.trim());
}
