import { readFileSync } from 'node:fs';
import { minifySync, type Plugin } from 'vite';

/** Scripts that stand in the page itself; every page carries them, so every byte counts. */
export const inlineScripts = ['components/Units/before-paint.js', 'components/Units/show-units.js'];

/** The text of such a script as the page carries it, and as the policy hashes it. */
export const inlineText = (file: string): string =>
  minifySync(file, readFileSync(file, 'utf8')).code.trim();

/** Gives a component that imports one of them with `?raw` the shortened text. */
export function shortInlineScripts(): Plugin {
  return {
    name: 'short-inline-scripts',
    enforce: 'pre',
    load(id) {
      const file = inlineScripts.find((one) => id.endsWith(`${one}?raw`));
      return file && `export default ${JSON.stringify(inlineText(file))};`;
    },
  };
}
