import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { buildBelow } from './build-below.ts';
import { type BuiltSite, readSite, site } from './built-site.ts';
import { linkProblems } from './link-problems.ts';

const base = '/course/';
let directory: string;
let below: BuiltSite;

/** Builds the site a second time, as for a host that serves it from below a path. */
beforeAll(async () => {
  directory = await buildBelow(base);
  below = readSite(directory, base);
});
afterAll(() => rmSync(directory, { recursive: true, force: true }));

it('has the same pages as the site at the root of a host', () => {
  const inside = (one: BuiltSite) => one.pages.map(({ path }) => path.slice(one.base.length));
  expect(inside(below)).toEqual(inside(site));
});

it('every link resolves below the path', () => {
  expect(below.pages.flatMap((page) => linkProblems(page, below))).toEqual([]);
});

it('no attribute, script or data file starts an address at the root of the host', () => {
  const textual = [...below.files].filter((file) =>
    /\.(html|css|m?js|json|webmanifest|xml)$/.test(file),
  );
  const strays = textual.flatMap((file) => {
    const text = readFileSync(join(directory, file.slice(base.length)), 'utf8');
    return [...text.matchAll(rootRelative)]
      .map(([, address = '']) => address)
      .filter((address) => !address.startsWith(base) && isOurs(address))
      .map((address) => `${file}: ${address}`);
  });
  expect(strays).toEqual([]);
});

const rootRelative = /(?:["'`]|=|\burl\()(\/[\w.-][\w./%-]*)/g;

/** An address that the site at the root answers: `/lessons/flat-bead/`, `/icon.svg`. */
function isOurs(address: string): boolean {
  const inSite = site.base + address.slice(1);
  return ['', 'index.html', '/index.html'].some((end) => site.files.has(inSite + end));
}
