import { readdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

/** Lists every page for search engines, in `sitemap.xml`, and says so in `robots.txt`. */
export function siteMap(): AstroIntegration {
  let home = '';
  return {
    name: 'site-map',
    hooks: {
      'astro:config:done': ({ config }) => {
        home = new URL(`/${config.base}/`.replace(/\/+/g, '/'), config.site).href;
      },
      'astro:build:done': ({ dir }) => {
        const root = fileURLToPath(dir);
        const pages = readdirSync(root, { recursive: true, encoding: 'utf8' })
          .map((name) => name.replaceAll('\\', '/'))
          .filter((name) => /(^|\/)index\.html$/.test(name))
          .map((name) => home + name.replace(/index\.html$/, ''))
          .sort();
        const list = pages.map((page) => `<url><loc>${page}</loc></url>`).join('\n');
        writeFileSync(
          `${root}sitemap.xml`,
          `<?xml version="1.0" encoding="UTF-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${list}\n</urlset>\n`,
        );
        writeFileSync(
          `${root}robots.txt`,
          `User-agent: *\nAllow: /\nSitemap: ${home}sitemap.xml\n`,
        );
      },
    },
  };
}
