import { execFile } from 'node:child_process';
import { mkdirSync, mkdtempSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { repository } from './built-site.ts';

/** Builds the site for a host that serves it from below a path; returns the directory. */
export async function buildBelow(base: string): Promise<string> {
  const cache = join(repository, '.cache');
  mkdirSync(cache, { recursive: true });
  const directory = mkdtempSync(join(cache, 'below-a-path-'));
  // What vitest adds to the environment would reach the pages of the build.
  const { NODE_ENV, MODE, DEV, PROD, SSR, BASE_URL, VITEST, TEST, ...env } = process.env;
  const astro = join(repository, 'node_modules/astro/bin/astro.mjs');
  await promisify(execFile)(process.execPath, [astro, 'build', '--outDir', directory], {
    cwd: repository,
    env: { ...env, SITE_BASE: base },
    maxBuffer: 100e6,
  });
  return directory;
}
