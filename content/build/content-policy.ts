import { createHash } from 'node:crypto';
import { inlineScripts, inlineText } from './inline-scripts.ts';

type Hash = `sha256-${string}`;

function hashOf(file: string): Hash {
  return `sha256-${createHash('sha256').update(inlineText(file)).digest('base64')}`;
}

/**
 * The content security policy of every page, for Astro's `security.csp`: nothing from elsewhere,
 * scripts and styles only by the hash of their text. Astro adds the hashes of what it bundles.
 */
export function contentPolicy() {
  return {
    directives: [
      "default-src 'self'",
      "img-src 'self' data: blob:",
      "object-src 'none'",
      "base-uri 'self'",
      "form-action 'none'",
    ] as const satisfies string[],
    scriptDirective: { hashes: inlineScripts.map(hashOf) },
  };
}
