import { createHash } from 'node:crypto';
import type { HtmlElement } from 'html-validate';
import { expect, it } from 'vitest';
import { attribute, type BuiltPage, eachPage } from './built-site.ts';

/** The directives of the page's content security policy. */
function policyOf(page: BuiltPage): Map<string, string[]> {
  const metas = page.document
    .querySelectorAll('head > meta[http-equiv]')
    .filter((meta) => /^content-security-policy$/i.test(attribute(meta, 'http-equiv') ?? ''));
  expect(metas, 'content security policies').toHaveLength(1);
  const text = attribute(metas[0] as HtmlElement, 'content') ?? '';
  const directives = text.split(';').map((directive) => directive.trim().split(/\s+/));
  return new Map(directives.map(([name = '', ...values]) => [name, values]));
}

const hashOf = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** Between the tags exactly as the browser hashes it. */
function inlineTexts(page: BuiltPage, tag: 'script' | 'style'): string[] {
  const elements = page.html.matchAll(new RegExp(`<${tag}\\b([^>]*)>([\\s\\S]*?)</${tag}>`, 'g'));
  return [...elements]
    .filter(([, attributes = '']) => !/\ssrc=|application\/(ld\+)?json/.test(attributes))
    .map(([, , text = '']) => text);
}

it.each(eachPage)('%s allows only its own files and what it names by hash', (_path, page) => {
  const policy = policyOf(page);
  expect(policy.get('default-src')).toEqual(["'self'"]);
  expect(policy.get('object-src')).toEqual(["'none'"]);
  expect(policy.get('base-uri')).toEqual(["'self'"]);
  const loose = [...policy.values()].flat().filter((source) => /unsafe|\*|^https?:/.test(source));
  expect(loose, 'loose sources').toEqual([]);
});

it.each(eachPage)('%s names every inline script and style by hash', (_path, page) => {
  const policy = policyOf(page);
  for (const tag of ['script', 'style'] as const) {
    const allowed = new Set(policy.get(`${tag}-src`));
    const unnamed = inlineTexts(page, tag).filter((text) => !allowed.has(hashOf(text)));
    expect(unnamed, `inline ${tag} that the browser will refuse`).toEqual([]);
  }
});

it.each(eachPage)('%s has no style attribute and no event attribute', (_path, page) => {
  const elements = page.document.querySelectorAll('*');
  const refused = elements.flatMap((element) =>
    element.attributes
      .filter(({ key }) => /^(style|on\w+)$/i.test(key))
      .map(({ key, value }) => `<${element.tagName} ${key}="${value}">`),
  );
  expect(refused).toEqual([]);
});
