import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';
import { eachPage } from './built-site.ts';

const hashOf = (text: string) => `sha256-${createHash('sha256').update(text).digest('base64')}`;

it.each(eachPage)('%s carries no hash of a script or style that is not in it', (_path, page) => {
  const texts = page.html.matchAll(/<(script|style)\b[^>]*>([\s\S]*?)<\/\1>/g);
  const present = new Set([...texts].map(([, , text = '']) => hashOf(text)));
  const named = [...page.html.matchAll(/sha256-[A-Za-z0-9+/]+=*/g)].map(([hash]) => hash);
  expect(named.length).toBeGreaterThan(0);
  expect(named.filter((hash) => !present.has(hash))).toEqual([]);
});
