import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { attribute, type BuiltPage, type BuiltSite } from './built-site.ts';
import { scriptFilesAtOnce } from './script-graph.ts';

/** One kilobyte of the budgets: 1,000 bytes. */
export const KB = 1000;

/** Bytes on the wire: brotli at its best, for text; as they are, for what is packed already. */
export const weightOfText = (text: string | Buffer) => brotliCompressSync(text).length;

const weights = new Map<string, number>();

export function weightOfFile(address: string, site: BuiltSite): number {
  const remembered = weights.get(site.directory + address);
  if (remembered !== undefined) return remembered;
  const content = readFileSync(join(site.directory, address.slice(site.base.length)));
  const packed = /\.(woff2|png|jpe?g|webp|ico|zip|pdf)$/.test(address);
  const weight = packed ? content.length : weightOfText(content);
  weights.set(site.directory + address, weight);
  return weight;
}

export const weightOfFiles = (addresses: Iterable<string>, site: BuiltSite) =>
  [...addresses].reduce((sum, address) => sum + weightOfFile(address, site), 0);

/** All that a page loads before anyone touches it, by address, in bytes on the wire. */
export function loadedAtOnce(page: BuiltPage, site: BuiltSite): Map<string, number> {
  const linked = page.document
    .querySelectorAll('link[href]')
    .filter((link) => /^(stylesheet|icon|manifest|preload)$/.test(attribute(link, 'rel') ?? ''))
    .map((link) => attribute(link, 'href'));
  const shown = page.document
    .querySelectorAll('img[src]')
    .filter((image) => image.getAttributeValue('loading') !== 'lazy')
    .map((image) => attribute(image, 'src'));
  const files = [...linked, ...shown, ...scriptFilesAtOnce(page, site)];
  const addresses = new Set(
    files.filter((file) => file !== undefined && !file.startsWith('data:')),
  );
  return new Map([
    [page.path, weightOfText(page.html)],
    ...[...addresses].map((file) => [file as string, weightOfFile(file as string, site)] as const),
  ]);
}

/** Scripts that run before anyone touches the page: the inline ones together, and each file. */
export function scriptAtOnce(page: BuiltPage, site: BuiltSite): Map<string, number> {
  const inline = page.document
    .querySelectorAll('script')
    .filter(
      (script) => !script.hasAttribute('src') && !/json/.test(attribute(script, 'type') ?? ''),
    )
    .map((script) => script.textContent)
    .join('\n');
  const files = [...scriptFilesAtOnce(page, site)];
  return new Map([
    ['inline scripts', inline === '' ? 0 : weightOfText(inline)],
    ...files.map((file) => [file, weightOfFile(file, site)] as const),
  ]);
}
