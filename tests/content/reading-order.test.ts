import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { readingOrder, type Unit } from '../../content/reading-order.ts';

const units: readonly Unit[] = readingOrder;
const slugs = units.flatMap(({ lessons }) => lessons);
const files = existsSync('content/lessons')
  ? readdirSync('content/lessons').filter((name) => name.endsWith('.mdx'))
  : [];

describe('the reading order', () => {
  it('names every lesson and every unit once', () => {
    expect(new Set(slugs).size).toBe(slugs.length);
    expect(new Set(units.map(({ id }) => id)).size).toBe(units.length);
  });

  it.each(files)('has a place for %s, in the unit that its front matter names', (name) => {
    const slug = name.replace('.mdx', '');
    const [, front = ''] = readFileSync(`content/lessons/${name}`, 'utf8').split(/^---$/m);
    const home = units.find(({ lessons }) => lessons.includes(slug));
    expect(home?.id).toBe(parse(front).unit);
  });
});
