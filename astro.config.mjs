import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { contentPolicy } from './content/build/content-policy.ts';
import { shortInlineScripts } from './content/build/inline-scripts.ts';
import { markdown } from './content/build/markdown.ts';
import { offlineCopy } from './content/build/offline-copy.ts';
import { oneLiveChunk } from './content/build/one-live-chunk.ts';
import { ownPolicy } from './content/build/own-policy.ts';
import { plainDynamicImports } from './content/build/plain-dynamic-imports.ts';
import { siteMap } from './content/build/site-map.ts';

/** SITE_BASE may be given as /course/, /course or course: the site then lives under that path. */
const folder = (process.env.SITE_BASE ?? '').replace(/^\/+|\/+$/g, '');

/** Astro marks each lesson for itself with a directive that the bundler does not know. */
const onwarn = (warning, warn) => warning.code === 'MODULE_LEVEL_DIRECTIVE' || warn(warning);

export default defineConfig({
  site: process.env.SITE_URL ?? 'https://sixteenths.example',
  base: folder ? `/${folder}/` : '/',
  srcDir: './content',
  outDir: './dist',
  cacheDir: './.cache/astro',
  trailingSlash: 'always',
  integrations: [mdx(), ownPolicy(), siteMap(), offlineCopy()],
  markdown,
  build: { inlineStylesheets: 'always' },
  security: { csp: contentPolicy() },
  devToolbar: { enabled: false },
  vite: {
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
    plugins: [shortInlineScripts(), ...plainDynamicImports(), oneLiveChunk()],
    build: { rolldownOptions: { onwarn } },
  },
});
