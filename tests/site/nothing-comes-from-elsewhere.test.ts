import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { attribute, eachPage, site } from './built-site.ts';

/** What a browser fetches or sends to by itself; a link to follow may lead anywhere. */
const fetched = [
  'script[src]',
  'img[src]',
  'iframe[src]',
  'embed[src]',
  'object[data]',
  'audio[src]',
  'video[src]',
  'source[src]',
  'track[src]',
  'use[href]',
  'image[href]',
  'form[action]',
  'link[href]',
];
/** These links only say where something is. */
const onlySaid = new Set(['canonical', 'alternate', 'license', 'author']);

it.each(eachPage)('%s', (_path, page) => {
  const foreign = page.document.querySelectorAll(fetched.join(', ')).flatMap((element) => {
    if (onlySaid.has(element.getAttributeValue('rel') ?? '')) return [];
    const addresses = ['src', 'href', 'data', 'action'].map((name) => attribute(element, name));
    return addresses.filter((address) => address && /^([a-z]+:)?\/\//i.test(address));
  });
  expect(foreign).toEqual([]);
});

it('style sheets and scripts name no other host to fetch from', () => {
  const files = [...site.files].filter((file) => /\.(css|m?js|html)$/.test(file));
  const foreign = files.flatMap((file) => {
    const text = readFileSync(join(site.directory, file.slice(site.base.length)), 'utf8');
    const loads = text.matchAll(
      /(?:url\(|@import|import\(|fetch\()\s*["'`]?((?:https?:)?\/\/[^"'`)\s]+)/g,
    );
    return [...loads].map((load) => `${file}: ${load[1]}`);
  });
  expect(foreign).toEqual([]);
});
