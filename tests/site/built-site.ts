import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type HtmlElement, HtmlValidate, Parser } from 'html-validate';

export interface BuiltPage {
  /** As in a link: base path, final slash; `/404.html` for the page of lost addresses. */
  path: string;
  html: string;
  /** Parsed when it is first asked for. */
  readonly document: HtmlElement;
}

export interface BuiltSite {
  directory: string;
  /** `/`, or `/course/` when built to be served from below that path. */
  base: string;
  pages: BuiltPage[];
  /** Every file by its address, base path included. */
  files: Set<string>;
}

const parserSettings = new HtmlValidate().getConfigForSync('page.html');

/**
 * Reads a built site from its directory.
 * @throws Error when there is nothing in it
 */
export function readSite(directory: string, base: string): BuiltSite {
  if (!existsSync(join(directory, 'index.html'))) {
    throw new Error(`There is no built site in ${directory}. Build it first: npm run build`);
  }
  const names = readdirSync(directory, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(directory, join(entry.parentPath, entry.name)).replaceAll(sep, '/'))
    .sort();
  const pages = names
    .filter((name) => name.endsWith('.html'))
    .map((name) => {
      const html = readFileSync(join(directory, name), 'utf8');
      const path = base + name.replace(/(^|\/)index\.html$/, '$1');
      let document: HtmlElement | undefined;
      return {
        path,
        html,
        get document() {
          document ??= new Parser(parserSettings).parseHtml(html);
          return document;
        },
      };
    });
  return { directory, base, pages, files: new Set(names.map((name) => base + name)) };
}

/** `course` → `/course/`, as the build itself reads SITE_BASE. */
const baseFrom = (text = '') => `/${text}/`.replace(/\/+/g, '/');

export const repository = fileURLToPath(new URL('../..', import.meta.url));

/** The site that `npm run build` made. */
export const site = readSite(
  join(repository, process.env.OUT_DIR ?? 'dist'),
  baseFrom(process.env.SITE_BASE),
);

/** For `it.each`: the path names the test. */
export const eachPage = site.pages.map((page) => [page.path, page] as const);

/** The text of an attribute with its character references read. */
export function attribute(element: HtmlElement, name: string): string | undefined {
  return element.getAttributeValue(name)?.replace(/&(#x?[0-9a-f]+|\w+);/gi, (whole, reference) => {
    if (/^#x/i.test(reference))
      return String.fromCodePoint(Number.parseInt(reference.slice(2), 16));
    if (reference.startsWith('#')) return String.fromCodePoint(Number(reference.slice(1)));
    return { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" }[reference as string] ?? whole;
  });
}
