const base = import.meta.env.BASE_URL.replace(/\/+$/, '');

/**
 * The address of a page or file of this site, wherever the site is served from.
 * @param path from the site's root, with its final slash when it is a page: `/lessons/flat-bead/`
 * @throws when the path does not start at the root
 */
export function to(path: string): string {
  if (!path.startsWith('/')) throw new Error(`no path from the root: "${path}"`);
  return base + path;
}
