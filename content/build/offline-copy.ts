import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import type { AstroIntegration } from 'astro';

/** What a reader without a network has no use for. */
const left = /^(sw\.js|robots\.txt|sitemap\.xml|readme-[\w-]+\.png)$/;
const packed = /\.(png|jpe?g|webp|woff2|zip|pdf)$/;

/**
 * Writes the service worker that answers without a network, with the list of all files, and writes
 * into the pages how much there is to load. Must come after everything that changes a built page.
 */
export function offlineCopy(): AstroIntegration {
  let base = '/';
  return {
    name: 'offline-copy',
    hooks: {
      'astro:config:done': ({ config }) => {
        base = `/${config.base}/`.replace(/\/+/g, '/');
      },
      'astro:build:done': ({ dir }) => {
        writeOfflineCopy(fileURLToPath(dir), base);
      },
    },
  };
}

/**
 * Writes `sw.js` for the site built in the directory `root` and served below `base`.
 * @param base with a slash at both ends
 */
export function writeOfflineCopy(root: string, base: string): void {
  const names = readdirSync(root, { recursive: true, encoding: 'utf8' })
    .map((name) => name.replaceAll('\\', '/'))
    .filter((name) => statSync(join(root, name)).isFile() && !left.test(name))
    .sort();
  sayTheSize(root, names);
  const worker = readFileSync(new URL('offline-worker.js', import.meta.url), 'utf8');
  writeFileSync(join(root, 'sw.js'), filledIn(worker, base, hashes(root, names)));
}

/** In the pages, the marks of components/Offline/course-size.ts give way to figures. */
function sayTheSize(root: string, names: readonly string[]): void {
  let download = 0;
  let room = 0;
  for (const name of names) {
    const content = readFileSync(join(root, name));
    download += packed.test(name) ? content.length : gzipSync(content).length;
    room += content.length;
  }
  for (const name of names.filter((one) => one.endsWith('.html'))) {
    const html = readFileSync(join(root, name), 'utf8');
    const said = html
      .replaceAll('@course-download@', megabytes(download))
      .replaceAll('@course-room@', megabytes(room));
    if (said !== html) writeFileSync(join(root, name), said);
  }
}

/** Rounded up, so that nobody loads more than was said. */
const megabytes = (bytes: number): string => (Math.ceil(bytes / 100_000) / 10).toFixed(1);

function hashes(root: string, names: readonly string[]): Record<string, string> {
  return Object.fromEntries(
    names.map((name) => [
      name.replace(/(^|\/)index\.html$/, '$1'),
      createHash('sha256')
        .update(readFileSync(join(root, name)))
        .digest('base64url')
        .slice(0, 8),
    ]),
  );
}

function filledIn(worker: string, base: string, files: Record<string, string>): string {
  const list = JSON.stringify(files).replaceAll('\\', '\\\\').replaceAll("'", "\\'");
  return worker.replace('@base@', () => base).replace('@files@', () => list);
}
