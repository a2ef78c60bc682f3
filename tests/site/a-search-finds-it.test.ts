import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import MiniSearch from 'minisearch';
import { expect, it } from 'vitest';
import { find } from '../../components/Search/find.ts';
import { indexOptions, type Place } from '../../components/Search/index-options.ts';
import { site } from './built-site.ts';

const text = readFileSync(join(site.directory, 'search.json'), 'utf8');
const index = MiniSearch.loadJSON<Place>(text, indexOptions);

/** What learners type, slips included, and where they should find it among the first five. */
it.each([
  ['undercutt', '/glossary/#undercut'],
  ['under cut', '/glossary/#undercut'],
  ['preheat', '/glossary/#preheat'],
  ['prehaet', '/glossary/#preheat'],
  ['preheating', '/calculators/preheat-minimum/'],
  ['6g', '/lessons/pipe-6g-nps-6/'],
  ['6G', '/exercises/pipe-6g-nps-2/'],
  ['arc blow', '/glossary/#arc-blow'],
  ['arcblow', '/glossary/#arc-blow'],
  ['porosty', '/glossary/#porosity'],
  ['worm holes', '/faults/#porosity'],
  ['slag incluson', '/glossary/#slag-inclusion'],
  ['duty cyle', '/calculators/duty-cycle/'],
  ['horizntal fillet', '/lessons/fillet-2f/'],
  ['electrode oven', '/calculators/electrode-exposure/'],
  ['D1.1', '/sources/#source-aws-d1-1'],
  ['guided bend', '/glossary/#guided-bend-test'],
  ['heat imput', '/calculators/heat-input/'],
  ['rods', '/glossary/#electrode'],
])('%s', (typed, path) => {
  const paths = find(index, typed).map((found) => found.path);
  expect(paths.slice(0, 5)).toContain(path);
});

it('7018 is E7018', () => {
  const found = find(index, '7018');
  expect(found.length).toBeGreaterThan(3);
  expect(found.map(({ path }) => path)).toEqual(find(index, 'e7018').map(({ path }) => path));
});

it.each(['', '   ', 'zzzzqq', '<script>', '"', '(', '\u0000', 'ß'.repeat(500)])(
  '%j finds nothing, and does no harm',
  (typed) => {
    expect(find(index, typed)).toEqual([]);
  },
);

it('every place is a page of the site, and its heading is there', () => {
  const pages = new Map(site.pages.map((page) => [page.path, page]));
  const ids = new Map<string, Set<string>>();
  const idsOf = (path: string) => {
    const known = ids.get(path);
    if (known) return known;
    const found = new Set(
      [...(pages.get(path)?.html ?? '').matchAll(/\sid="([^"]+)"/g)].map(([, id = '']) => id),
    );
    ids.set(path, found);
    return found;
  };
  const stored = Object.values(JSON.parse(text).storedFields as Record<string, { path: string }>);
  const lost = stored
    .map(({ path }) => path)
    .filter((path) => {
      const [address = '', id] = path.split('#');
      return !pages.has(address) || (id !== undefined && !idsOf(address).has(id));
    });
  expect(stored.length).toBeGreaterThan(400);
  expect(lost).toEqual([]);
});
