import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { repository, site } from './built-site.ts';

const cache = join(repository, '.cache');

/**
 * A copy of the site as a host serves it from below a path; the caller may change it, and takes it
 * away. Built when the site at the root has changed since the last time: `sw.js` holds the hashes of
 * all its files.
 */
export async function buildBelow(base: string): Promise<string> {
  const built = join(cache, 'below-a-path');
  const mark = join(built, '.built-from');
  const version = createHash('sha256')
    .update(base)
    .update(readFileSync(join(site.directory, 'sw.js')))
    .digest('hex');
  if (!existsSync(mark) || readFileSync(mark, 'utf8') !== version) {
    const fresh = await build(base);
    rmSync(built, { recursive: true, force: true });
    renameSync(fresh, built);
    writeFileSync(mark, version);
  }
  const copy = emptyDirectory();
  cpSync(built, copy, { recursive: true, filter: (from) => from !== mark });
  return copy;
}

function emptyDirectory(): string {
  mkdirSync(cache, { recursive: true });
  return mkdtempSync(join(cache, 'below-a-path-'));
}

async function build(base: string): Promise<string> {
  const directory = emptyDirectory();
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
