import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { contentPolicy } from './content/build/content-policy.ts';
import { ownPolicy } from './content/build/own-policy.ts';
import { plainDynamicImports } from './content/build/plain-dynamic-imports.ts';

/** SITE_BASE may be given as /course/, /course or course: the site then lives under that path. */
const folder = (process.env.SITE_BASE ?? '').replace(/^\/+|\/+$/g, '');

export default defineConfig({
  site: process.env.SITE_URL ?? 'https://sixteenths.example',
  base: folder ? `/${folder}/` : '/',
  srcDir: './content',
  outDir: './dist',
  cacheDir: './.cache/astro',
  trailingSlash: 'always',
  integrations: [mdx(), ownPolicy()],
  markdown: {
    syntaxHighlight: false,
    // Curled quotes would turn the inch sign of 1/4" into a closing quote.
    processor: satteri({
      features: { smartPunctuation: { quotes: false, dashes: true, ellipses: true } },
    }),
  },
  build: { inlineStylesheets: 'always' },
  security: { csp: contentPolicy() },
  devToolbar: { enabled: false },
  vite: {
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
    plugins: plainDynamicImports(),
  },
});
