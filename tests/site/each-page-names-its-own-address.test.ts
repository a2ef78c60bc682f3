import { expect, it } from 'vitest';
import { attribute, eachPage } from './built-site.ts';

it.each(eachPage)('%s', (path, page) => {
  const canonical = page.document.querySelector('head > link[rel="canonical"]');
  const address = canonical && attribute(canonical, 'href');
  const url = new URL(address ?? '', 'relative://');
  expect(url.protocol, `${address} must be a full address`).toBe('https:');
  // The page of lost addresses stands wherever the host shows it.
  if (!path.endsWith('/404.html')) expect(url.pathname).toBe(path);
});

it.each(eachPage)('%s describes itself to machines in sound JSON, if at all', (_path, page) => {
  for (const script of page.document.querySelectorAll('script[type="application/ld+json"]')) {
    const said = JSON.parse(script.textContent);
    expect(said['@context']).toBe('https://schema.org');
    expect(said['@type']).toEqual(expect.any(String));
  }
});
