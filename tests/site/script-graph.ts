import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import type { BuiltPage, BuiltSite } from './built-site.ts';
import { attribute } from './built-site.ts';

/** What one script file asks for: at once with itself, or later on demand. Addresses in the site. */
interface Requests {
  atOnce: string[];
  later: string[];
}

const known = new Map<string, Requests>();

function requestsOf(file: string, site: BuiltSite): Requests {
  const remembered = known.get(file);
  if (remembered) return remembered;
  const text = readFileSync(join(site.directory, file.slice(site.base.length)), 'utf8');
  const requests = { atOnce: found(text, fromStatement, file), later: found(text, onDemand, file) };
  known.set(file, requests);
  return requests;
}

const fromStatement = /(?:\bfrom|\bimport)\s*["'`](\.{1,2}\/[^"'`]+)["'`]/g;
const onDemand = /\bimport\(\s*["'`](\.{1,2}\/[^"'`]+)["'`]/g;

const found = (text: string, pattern: RegExp, file: string) =>
  [...text.matchAll(pattern)].map(([, name = '']) => posix.join(posix.dirname(file), name));

/** A set of files with all that comes with them at once. */
export function withImports(files: Iterable<string>, site: BuiltSite): Set<string> {
  const all = new Set(files);
  for (const file of all) for (const name of requestsOf(file, site).atOnce) all.add(name);
  return all;
}

/** What a set of loaded files may ask for later: each file named in an `import()`. */
export function askedForLater(loaded: Iterable<string>, site: BuiltSite): Set<string> {
  return new Set([...loaded].flatMap((file) => requestsOf(file, site).later));
}

/** The script files that a page loads without anyone touching it. */
export function scriptFilesAtOnce(page: BuiltPage, site: BuiltSite): Set<string> {
  const entries = [
    ...page.document.querySelectorAll('script[src]').map((one) => attribute(one, 'src')),
    ...page.document
      .querySelectorAll('link[rel="modulepreload"]')
      .map((one) => attribute(one, 'href')),
  ];
  return withImports(
    entries.filter((name) => name !== undefined),
    site,
  );
}
