import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

const policy = /<meta http-equiv="content-security-policy"[^>]*>/i;
const charset = /<meta charset="utf-8"[^>]*>/i;
const style = /<style>([\s\S]*?)<\/style>/g;
const inline = /<(script|style)\b(?![^>]*(?:\ssrc=|json))[^>]*>([\s\S]*?)<\/\1>/g;

/**
 * Gives each built page the policy it needs. Astro names every hash of the site on every page, in
 * bytes that do not compress, and puts the policy last in the head, where it comes too late for
 * the scripts above it. Here a page has its styles in one block, keeps the hashes of its own scripts
 * and styles, and the policy stands before them.
 */
export function ownPolicy(): AstroIntegration {
  return {
    name: 'own-policy',
    hooks: {
      'astro:build:done': ({ dir }) => {
        const root = fileURLToPath(dir);
        for (const file of readdirSync(root, { recursive: true, encoding: 'utf8' })) {
          if (!file.endsWith('.html')) continue;
          writeFileSync(
            root + file,
            withOwnPolicy(inOneBlock(readFileSync(root + file, 'utf8')), file),
          );
        }
      },
    },
  };
}

/** The styles of the head, in their order, where the first of them stood: one hash for all. */
function inOneBlock(html: string): string {
  const head = html.slice(0, html.indexOf('</head>'));
  const blocks = [...head.matchAll(style)];
  const css = blocks.map(([, text = '']) => text.trim()).join('');
  let first = true;
  const merged = head.replace(style, () => {
    const block = first ? `<style>${css}</style>` : '';
    first = false;
    return block;
  });
  return merged + html.slice(head.length);
}

function withOwnPolicy(html: string, file: string): string {
  const [found] = policy.exec(html) ?? [];
  if (!found || !charset.test(html)) throw new Error(`${file} has no policy or no charset`);
  let own = found.replace(/ '(sha256-[^']+)'/g, '');
  for (const kind of ['script', 'style']) {
    const texts = [...html.matchAll(inline)].filter(([, tag]) => tag === kind);
    const hashes = new Set(texts.map(([, , text = '']) => ` '${hashOf(text)}'`));
    own = own.replace(`${kind}-src 'self'`, (directive) => directive + [...hashes].join(''));
  }
  // Text never becomes markup or a script's address, whatever a link, a file or the storage holds.
  own = own.replace(/;?"\s*\/?>$/, `;require-trusted-types-for 'script'">`);
  return html.replace(found, '').replace(charset, (tag) => tag + own);
}

const hashOf = (text: string) => `sha256-${createHash('sha256').update(text).digest('base64')}`;
