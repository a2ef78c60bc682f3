import { site } from '../site/built-site.ts';

/** Every page of the built site but the one of lost addresses, heaviest first. */
export const allPages = site.pages
  .toSorted((a, b) => b.html.length - a.html.length)
  .map((page) => page.path)
  .filter((path) => !path.endsWith('/404.html'));

/** `/lessons/flat-bead/` → `lessons/…`: pages of one kind come from one route. */
const kindOf = (path: string) => path.slice(site.base.length).replace(/\/[^/]+\/$/, '/…');

/** The heaviest page of each kind, or every page when ALL_PAGES=1. */
export const sampledPages = process.env.ALL_PAGES
  ? allPages
  : [...Map.groupBy(allPages, kindOf).values()].map(([heaviest]) => heaviest as string);
